package linkwright.link;

/** One bit of a link's centre line, as one walks along the wire from the tip. */
public sealed interface PatternPart permits Run, Bend {}
