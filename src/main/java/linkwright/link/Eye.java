package linkwright.link;

/**
 * Where a link holds the next element.
 *
 * @param centre the centre of curvature that the line of pull goes through
 * @param hook where the next element bears when pulled: the inner surface of the wire
 * @param insideMm the inside diameter of the eye's bend where it is pulled through, in millimetres
 * @param fromMm where the eye's bend starts along the wire, in millimetres from the first tip
 * @param toMm where it ends
 */
public record Eye(Point centre, Point hook, double insideMm, double fromMm, double toMm) {}
