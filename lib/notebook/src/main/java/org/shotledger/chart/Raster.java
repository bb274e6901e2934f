package org.shotledger.chart;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;

/** Turns a drawing into pixels; the JDK's encoder writes the file, being several times faster than Batik's. */
final class Raster extends ImageTranscoder {
    private BufferedImage image;

    private Raster() {}

    static byte[] png(String svg, int width) {
        Raster raster = new Raster();
        raster.addTranscodingHint(KEY_WIDTH, (float) width);
        raster.addTranscodingHint(KEY_BACKGROUND_COLOR, Color.WHITE);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            raster.transcode(new TranscoderInput(new StringReader(svg)), null);
            ImageIO.write(raster.image, "png", out);
        } catch (TranscoderException e) {
            throw new IllegalStateException("The chart cannot be drawn as PNG: " + e.getMessage(), e);
        } catch (IOException e) {
            throw new UncheckedIOException("The chart cannot be written as PNG.", e);
        }
        return out.toByteArray();
    }

    @Override
    public BufferedImage createImage(int width, int height) {
        return new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    }

    @Override
    public void writeImage(BufferedImage drawn, TranscoderOutput output) {
        image = drawn;
    }
}
