package org.shotledger.document;

/** The contrast of two colours after the definitions "relative luminance" and "contrast ratio" of WCAG 2.2 (W3C, 2023). */
public final class Contrast {
    private Contrast() {}

    /**
     * The contrast ratio.
     *
     * @param one a colour, 0xRRGGBB
     * @param other the other
     * @return 1 for equal colours to 21 for black on white
     */
    public static double of(int one, int other) {
        double light = Math.max(luminance(one), luminance(other));
        double dark = Math.min(luminance(one), luminance(other));
        return (light + 0.05) / (dark + 0.05);
    }

    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
    }

    private static double linear(int channel) {
        double s = (channel & 0xFF) / 255.0;
        return s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
    }
}
