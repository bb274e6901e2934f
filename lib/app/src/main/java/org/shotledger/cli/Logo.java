package org.shotledger.cli;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.shotledger.files.AtomicFile;

/** The kernel's picture in Jupyter's launcher: power as two shares of a column, over the line of a ledger. */
final class Logo {

    private static final int SIDE = 64;

    /** A filled rectangle, in 64ths of the picture's side. */
    private record Block(int left, int top, int width, int height, int color) {

        void draw(Graphics2D g) {
            g.setColor(new Color(color));
            g.fill(new Rectangle2D.Double(left, top, width, height));
        }

        String svg() {
            return String.format(
                    Locale.ROOT,
                    "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"#%06x\"/>",
                    left,
                    top,
                    width,
                    height,
                    color);
        }
    }

    // the charts' own colours for boost alone and for what nitrous adds
    private static final List<Block> BLOCKS = List.of(
            new Block(0, 0, SIDE, SIDE, 0xf6f6f3),
            new Block(12, 34, 16, 18, 0x0072b2),
            new Block(36, 26, 16, 26, 0x0072b2),
            new Block(36, 10, 16, 14, 0xd55e00),
            new Block(8, 54, 48, 3, 0x222222));

    private Logo() {}

    /** Writes the files that Jupyter looks for beside an entry (its documentation, "Kernel specs"). */
    static void write(Path folder) throws IOException {
        AtomicFile.write(folder.resolve("logo-32x32.png"), png(32), AtomicFile.Access.USUAL);
        AtomicFile.write(folder.resolve("logo-64x64.png"), png(64), AtomicFile.Access.USUAL);
        AtomicFile.write(folder.resolve("logo-svg.svg"), svg());
    }

    private static byte[] png(int side) throws IOException {
        BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.scale((double) side / SIDE, (double) side / SIDE);
        BLOCKS.forEach(block -> block.draw(g));
        g.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    private static String svg() {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 64 64\" width=\"64\" height=\"64\">"
                + BLOCKS.stream().map(Block::svg).collect(Collectors.joining()) + "</svg>\n";
    }
}
