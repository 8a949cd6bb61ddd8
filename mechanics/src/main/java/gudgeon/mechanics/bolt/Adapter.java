package gudgeon.mechanics.bolt;

/**
 * An adapter that sets the fastener beside the wrench's drive and so changes its arm.
 *
 * @param lengthMm from the middle of the drive to the middle of the fastener, mm, 0 or more
 * @param angleDeg between adapter and wrench: 0 in line and forwards, 90 square to it, 180 backwards
 * @param armMm from the middle of the drive to the middle of the grip, mm, above 0
 */
public record Adapter(double lengthMm, double angleDeg, double armMm) {
    public Adapter {
        if (!(lengthMm >= 0) || !(armMm > 0) || !Double.isFinite(lengthMm + armMm + angleDeg)) {
            throw new IllegalArgumentException("an adapter is 0 mm or more long and the wrench's arm above 0 mm, got "
                    + lengthMm + " mm, " + angleDeg + "° and " + armMm + " mm");
        }
        if (!(armMm + lengthMm * Math.cos(Math.toRadians(angleDeg)) > 0)) {
            throw new IllegalArgumentException("an adapter turned back by its arm or more turns nothing, got "
                    + lengthMm + " mm on " + armMm + " mm");
        }
    }

    /** Torque at the fastener over torque at the drive: (L + a cos θ)/L (moments about the fastener; TM 9-254, figure 46). */
    public double gain() {
        return (armMm + lengthMm * Math.cos(Math.toRadians(angleDeg))) / armMm;
    }

    /** What to set the wrench to, in N·m, for a torque in N·m at the fastener. */
    public double settingNm(double wantedNm) {
        return wantedNm / gain();
    }

    /** What the fastener gets, in N·m, when the wrench is set to so many N·m. */
    public double givesNm(double settingNm) {
        return settingNm * gain();
    }
}
