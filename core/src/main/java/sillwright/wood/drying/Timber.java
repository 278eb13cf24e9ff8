package sillwright.wood.drying;

import java.util.List;

import sillwright.measure.Basis;
import sillwright.walk.Species;
import sillwright.wood.moisture.Moisture;
import sillwright.wood.moisture.Porosity;

/// What a wood lets through in one direction. m, kg, s; moisture as a fraction.
///
/// @param densityKgM3 oven-dry mass over green volume
/// @param boundM2S    diffusion of bound water at 20 °C and no moisture
/// @param rise        how steeply it grows: D = bound · exp(rise · u)
/// @param saturation  moisture at which cell walls are full
/// @param freeM2S     diffusion of free water where the wood holds all it can take up
/// @param full        the moisture it then has
public record Timber(double densityKgM3, double boundM2S, double rise, double saturation, double freeM2S, double full) {
    /// Along the fibres, as water goes in at an end, or across them.
    public enum Grain { ACROSS, ALONG }

    private static final double REFERENCE_GRAVITY = 0.42, ALONG_OVER_ACROSS = 12, SUCKS_ACROSS = 0.003, SUCKS_ALONG = 0.015, DRY = 0.12, FILLS = 0.5;

    /// What [#of] rests on.
    public static final List<Basis> BASIS = List.of(
            Basis.memory("Hanhijärvi (1995), as used by Fortino and others (2009)", "D = 8.0e-11 exp(4.0u) m²/s across softwood near 20 °C, surface coefficient 3.2e-8 exp(4.0u) m/s"),
            Basis.memory("Siau, Transport Processes in Wood (1984)", "activation energy 38500 - 290M J/mol, here at 12 %; other densities by 1/((1-v)(1-√v))"),
            Basis.read("Sonderegger and others, Holzforschung 65:819 (2011)", "abstract: up to 12 times as fast along the grain in spruce"),
            Basis.memory("Water uptake of softwood, kg/(m²·s^0.5)", "across 0.001 to 0.005, along 0.01 to 0.02, no table found: 0.003 and 0.015 are used"),
            Basis.own("free water moves by the cube of the share of its room that is filled, and takes up half the room there is"));

    /// Of a species, by its density.
    ///
    /// Free water: the coefficient that makes dry wood (12 %) take up the sorptivity A, by Parlange's integral S² = ∫ (full + u - 2u0) D du (from memory).
    /// With D = free · s³, s from 0 at saturation to 1 at full, it is free · room · ((full + saturation - 2u0)/4 + room/5).
    public static Timber of(Species species, Grain grain) {
        double density = 1000 * species.gravityGreen(), saturation = Moisture.FIBRE_SATURATION;
        double most = (Porosity.CELL_WALL_NEWER - species.gravityGreen()) / (Porosity.CELL_WALL_NEWER * species.gravityGreen());
        double room = FILLS * (most - saturation), full = saturation + room;
        double open = open(species.gravityOvenDry()) / open(REFERENCE_GRAVITY);
        double bound = 8.0e-11 * open * (grain == Grain.ALONG ? ALONG_OVER_ACROSS : 1);
        double depth = (grain == Grain.ALONG ? SUCKS_ALONG : SUCKS_ACROSS) / density;
        return new Timber(density, bound, 4.0, saturation, depth * depth / (room * ((full + saturation - 2 * DRY) / 4 + room / 5)), full);
    }

    /// How much more easily gross wood lets vapour and bound water through than its cell walls alone.
    private static double open(double gravityOvenDry) {
        double voids = Porosity.voids(gravityOvenDry, Porosity.CELL_WALL);
        return 1 / ((1 - voids) * (1 - Math.sqrt(voids)));
    }

    /// A wood with one coefficient at all moistures and no free water, for closed answers.
    public static Timber steady(double m2PerS) { return new Timber(400, m2PerS, 0, Moisture.FIBRE_SATURATION, 0, 1); }

    /// Diffusion at a temperature over that at 20 °C.
    ///
    /// Source: Siau (1984), exp(-E/RT) with E = 38500 - 290M J/mol at M = 12 % (from memory).
    ///
    /// @param tempC -30 to 60 °C
    public static double quick(double tempC) { return Math.exp(-(38500 - 290 * 12) / 8.314 * (1 / (tempC + 273.15) - 1 / 293.15)); }

    /// D at 20 °C, m²/s, below fibre saturation.
    public double diffusion(double moisture) { return boundM2S * Math.exp(rise * moisture); }
}
