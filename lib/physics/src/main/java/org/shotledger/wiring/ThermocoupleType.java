package org.shotledger.wiring;

import org.shotledger.units.UnitFactors;

/**
 * Letter-designated thermocouples with their reference functions of ITS-90, in mV over degC with the cold end at 0 degC (NIST Monograph
 * 175; NIST Standard Reference Database 60).
 */
public enum ThermocoupleType {
    /** Nickel-chromium against copper-nickel. */
    E(
            new Piece(
                    -270,
                    0,
                    0,
                    5.8665508708e-2,
                    4.5410977124e-5,
                    -7.7998048686e-7,
                    -2.5800160843e-8,
                    -5.9452583057e-10,
                    -9.3214058667e-12,
                    -1.0287605534e-13,
                    -8.0370123621e-16,
                    -4.3979497391e-18,
                    -1.6414776355e-20,
                    -3.9673619516e-23,
                    -5.5827328721e-26,
                    -3.4657842013e-29),
            new Piece(
                    0,
                    1000,
                    0,
                    5.8665508710e-2,
                    4.5032275582e-5,
                    2.8908407212e-8,
                    -3.3056896652e-10,
                    6.5024403270e-13,
                    -1.9197495504e-16,
                    -1.2536600497e-18,
                    2.1489217569e-21,
                    -1.4388041782e-24,
                    3.5960899481e-28)),
    /** Iron against copper-nickel. */
    J(
            new Piece(
                    -210,
                    760,
                    0,
                    5.0381187815e-2,
                    3.0475836930e-5,
                    -8.5681065720e-8,
                    1.3228195295e-10,
                    -1.7052958337e-13,
                    2.0948090697e-16,
                    -1.2538395336e-19,
                    1.5631725697e-23),
            new Piece(
                    760,
                    1200,
                    296.45625681,
                    -1.4976127786,
                    3.1787103924e-3,
                    -3.1847686701e-6,
                    1.5720819004e-9,
                    -3.0691369056e-13)),
    /** Nickel-chromium against nickel-aluminium; with an exponential term above 0 degC. */
    K(
            new Piece(
                    -270,
                    0,
                    0,
                    3.9450128025e-2,
                    2.3622373598e-5,
                    -3.2858906784e-7,
                    -4.9904828777e-9,
                    -6.7509059173e-11,
                    -5.7410327428e-13,
                    -3.1088872894e-15,
                    -1.0451609365e-17,
                    -1.9889266878e-20,
                    -1.6322697486e-23),
            new Piece(
                    0,
                    1372,
                    -1.7600413686e-2,
                    3.8921204975e-2,
                    1.8558770032e-5,
                    -9.9457592874e-8,
                    3.1840945719e-10,
                    -5.6072844889e-13,
                    5.6075059059e-16,
                    -3.2020720003e-19,
                    9.7151147152e-23,
                    -1.2104721275e-26)),
    /** Nickel-chromium-silicon against nickel-silicon. */
    N(
            new Piece(
                    -270,
                    0,
                    0,
                    2.6159105962e-2,
                    1.0957484228e-5,
                    -9.3841111554e-8,
                    -4.6412039759e-11,
                    -2.6303357716e-12,
                    -2.2653438003e-14,
                    -7.6089300791e-17,
                    -9.3419667835e-20),
            new Piece(
                    0,
                    1300,
                    0,
                    2.5929394601e-2,
                    1.5710141880e-5,
                    4.3825627237e-8,
                    -2.5261169794e-10,
                    6.4311819339e-13,
                    -1.0063471519e-15,
                    9.9745338992e-19,
                    -6.0863245607e-22,
                    2.0849229339e-25,
                    -3.0682196151e-29)),
    /** Copper against copper-nickel. */
    T(
            new Piece(
                    -270,
                    0,
                    0,
                    3.8748106364e-2,
                    4.4194434347e-5,
                    1.1844323105e-7,
                    2.0032973554e-8,
                    9.0138019559e-10,
                    2.2651156593e-11,
                    3.6071154205e-13,
                    3.8493939883e-15,
                    2.8213521925e-17,
                    1.4251594779e-19,
                    4.8768662286e-22,
                    1.0795539270e-24,
                    1.3945027062e-27,
                    7.9795153927e-31),
            new Piece(
                    0,
                    400,
                    0,
                    3.8748106364e-2,
                    3.3292227880e-5,
                    2.0618243404e-7,
                    -2.1882256846e-9,
                    1.0996880928e-11,
                    -3.0815758772e-14,
                    4.5479135290e-17,
                    -2.7512901673e-20));

    private final Piece[] pieces;

    ThermocoupleType(Piece... pieces) {
        this.pieces = pieces;
    }

    /**
     * Least temperature of the reference function.
     *
     * @return K
     */
    public double low() {
        return pieces[0].from + UnitFactors.ICE_POINT;
    }

    /**
     * Greatest temperature of the reference function.
     *
     * @return K
     */
    public double high() {
        return pieces[pieces.length - 1].to + UnitFactors.ICE_POINT;
    }

    /**
     * Voltage with the cold end at 0 degC.
     *
     * @param temperature of the hot end, K, {@link #low()} to {@link #high()}
     * @return V
     */
    public double voltage(double temperature) {
        double t = temperature - UnitFactors.ICE_POINT;
        Piece piece = pieces[0];
        for (Piece next : pieces) {
            if (t >= next.from) {
                piece = next;
            }
        }
        return 1e-3 * (piece.at(t) + (this == K && t >= 0 ? bump(t) : 0));
    }

    private static double bump(double t) {
        double off = t - 126.9686;
        return 0.118597600 * Math.exp(-1.183432e-4 * off * off);
    }

    /** Polynomial over a part of the range, degC to mV. */
    private static final class Piece {
        final double from;
        final double to;
        final double[] c;

        Piece(double from, double to, double... c) {
            this.from = from;
            this.to = to;
            this.c = c;
        }

        double at(double t) {
            double sum = 0;
            for (int i = c.length - 1; i >= 0; i--) {
                sum = sum * t + c[i];
            }
            return sum;
        }
    }
}
