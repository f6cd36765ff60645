package linkwright.coach.content;

/**
 * One answer for each kind of part.
 *
 * @param <R> what is answered
 */
public interface PartCases<R> {
  /** Acts as a list to choose from. */
  R acts(Acts acts);

  /** Lengths to one scale. */
  R bars(Bars bars);

  /** Two columns where there is room, else one after the other. */
  R beside(Beside beside);

  /** Shapes to one scale. */
  R drawing(Drawing drawing);

  /** A form that is being filled in. */
  R fields(Fields fields);

  /** The one number of the place. */
  R figure(Figure figure);

  /** Pieces by stage. */
  R pieces(Pieces pieces);

  /** Sentences of one kind. */
  R prose(Prose prose);

  /** A question with its answers. */
  R question(Question question);

  /** Labelled values. */
  R rows(Rows rows);

  /** A table. */
  R table(Table table);

  /** A wait that runs or is due. */
  R waiting(WaitShown wait);
}
