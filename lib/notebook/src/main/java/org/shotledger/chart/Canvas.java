package org.shotledger.chart;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;

/**
 * Batik's SVG surface with two repairs for what XChart draws: outlines of letters become text again, and the many short
 * segments of a curve become one path, without which a dash pattern would start anew at each point.
 */
final class Canvas extends SVGGraphics2D {
    private final Words words;
    private Path2D path;
    private Point2D end;
    private Stroke pathStroke;
    private Paint pathPaint;
    private double lastBaseLine;

    Canvas(SVGGeneratorContext context, List<Font> fonts) {
        super(context, false);
        this.words = new Words(getFontRenderContext(), fonts);
    }

    private Canvas(Canvas other) {
        super(other);
        this.words = other.words;
    }

    Words words() {
        return words;
    }

    @Override
    public Graphics create() {
        flush();
        return new Canvas(this);
    }

    @Override
    public void dispose() {
        flush();
        super.dispose();
    }

    @Override
    public void fill(Shape shape) {
        Words.Word word = words.find(shape).orElse(null);
        if (word == null) {
            super.fill(shape);
            return;
        }
        AffineTransform before = getTransform();
        Font font = getFont();
        if (!word.upright()) {
            rotate(-Math.PI / 2);
        }
        setFont(word.font());
        drawString(word.text(), 0, word.upright() ? settle(before.getTranslateY()) : 0);
        setFont(font);
        setTransform(before);
    }

    @Override
    public void draw(Shape shape) {
        if (shape instanceof Line2D line) {
            extend(line);
        } else {
            flush();
            super.draw(shape);
        }
    }

    @Override
    public void setClip(Shape clip) {
        flush();
        super.setClip(clip);
    }

    @Override
    public void clip(Shape clip) {
        flush();
        super.clip(clip);
    }

    /** Draws what is still held back; call it before the result is read. */
    void flush() {
        if (path == null) {
            return;
        }
        Path2D whole = path;
        path = null;
        Stroke stroke = getStroke();
        Paint paint = getPaint();
        setStroke(pathStroke);
        setPaint(pathPaint);
        super.draw(whole);
        setStroke(stroke);
        setPaint(paint);
    }

    /** Words within three pixels of the last base line share it: their outlines differ by a hair, as 6 and 4 do. */
    private float settle(double baseLine) {
        double off = lastBaseLine - baseLine;
        if (Math.abs(off) < 3) {
            return (float) off;
        }
        lastBaseLine = baseLine;
        return 0;
    }

    private void extend(Line2D line) {
        boolean goesOn = path != null
                && line.getP1().equals(end)
                && getStroke().equals(pathStroke)
                && getPaint().equals(pathPaint);
        if (!goesOn) {
            flush();
            path = new Path2D.Double();
            path.moveTo(line.getX1(), line.getY1());
            pathStroke = getStroke() instanceof BasicStroke s ? s : new BasicStroke(1);
            pathPaint = getPaint();
        }
        path.lineTo(line.getX2(), line.getY2());
        end = line.getP2();
    }
}
