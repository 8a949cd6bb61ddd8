package gudgeon.mechanics.clearance;

/** The gap between the crown's flat and the head's flat with the gasket pressed. */
final class GapToHead extends OverCycle {
    private final TopEnd topEnd;

    GapToHead(TopEnd topEnd) {
        this.topEnd = topEnd;
    }

    @Override
    double bound(double theta) {
        return exact(theta);
    }

    @Override
    double rough(double theta) {
        return exact(theta);
    }

    @Override
    double exact(double theta) {
        return topEnd.gasketMm() - topEnd.crank().crownHeightMm(theta);
    }

    @Override
    double near(double theta) {
        return exact(theta);
    }

    /** On the top land's edge at top dead centre. */
    @Override
    Place place() {
        return new Place(topEnd.crown().landDiameterMm() / 2, 0, topEnd.crank().protrusionMm());
    }
}
