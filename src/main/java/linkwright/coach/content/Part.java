package linkwright.coach.content;

/**
 * One thing that a place says. The kinds are few, and every output answers each of them through
 * {@link PartCases}: a new kind does not compile until it is laid out everywhere.
 */
public sealed interface Part
    permits Acts,
        Bars,
        Beside,
        Drawing,
        Fields,
        Figure,
        Pieces,
        Prose,
        Question,
        Rows,
        Table,
        WaitShown {
  /** Answers with the case for this kind. */
  <R> R answer(PartCases<R> cases);
}
