package org.seafettle.formula.fuel;

import org.seafettle.formula.Validity;

/**
 * A tank's shape: how high a volume of water stands on its floor. Geometry, for a tank that stands
 * level; trim makes the layer a wedge. Lengths in centimetres, volumes in litres.
 */
public sealed interface Tank {

  /** The volume below a height, L; the height 0 to the tank's own. */
  double litres(double heightCm);

  /** The height that a volume reaches, cm; the volume 0 to the tank's own. */
  double heightCm(double litres);

  /** A box. */
  record Box(double lengthCm, double widthCm, double tallCm) implements Tank {

    public Box {
      size(lengthCm);
      size(widthCm);
      size(tallCm);
    }

    @Override
    public double litres(double heightCm) {
      return lengthCm * widthCm * height(heightCm, tallCm) / 1000;
    }

    @Override
    public double heightCm(double litres) {
      return contents(litres, this, tallCm) * 1000 / (lengthCm * widthCm);
    }
  }

  /** A cylinder on its end. */
  record Upright(double diameterCm, double tallCm) implements Tank {

    public Upright {
      size(diameterCm);
      size(tallCm);
    }

    @Override
    public double litres(double heightCm) {
      return Math.PI / 4 * diameterCm * diameterCm * height(heightCm, tallCm) / 1000;
    }

    @Override
    public double heightCm(double litres) {
      return contents(litres, this, tallCm) * 1000 / (Math.PI / 4 * diameterCm * diameterCm);
    }
  }

  /** A cylinder on its side. */
  record Lying(double diameterCm, double lengthCm) implements Tank {

    public Lying {
      size(diameterCm);
      size(lengthCm);
    }

    /** {@code L (R^2 acos((R - h)/R) - (R - h) sqrt(2 R h - h^2))}. */
    @Override
    public double litres(double heightCm) {
      double h = height(heightCm, diameterCm);
      double r = diameterCm / 2;
      double segment =
          r * r * Math.acos((r - h) / r) - (r - h) * Math.sqrt(Math.max(0, 2 * r * h - h * h));
      return lengthCm * segment / 1000;
    }

    /** By halving: the volume rises with the height. */
    @Override
    public double heightCm(double litres) {
      contents(litres, this, diameterCm);
      double low = 0;
      double high = diameterCm;
      while (high - low > 1e-9) {
        double middle = (low + high) / 2;
        if (litres(middle) < litres) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return (low + high) / 2;
    }
  }

  private static void size(double centimetres) {
    Validity.positive("A tank's side", centimetres, "cm");
    Validity.within("A tank's side", centimetres, 0, 2000, "cm");
  }

  private static double height(double heightCm, double tallCm) {
    return Validity.within("A height in the tank", heightCm, 0, tallCm, "cm");
  }

  private static double contents(double litres, Tank tank, double tallCm) {
    return Validity.within("A volume in the tank", litres, 0, tank.litres(tallCm), "L");
  }
}
