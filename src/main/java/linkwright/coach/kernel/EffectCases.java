package linkwright.coach.kernel;

/**
 * One answer for each kind of effect.
 *
 * @param <R> what is answered
 */
public interface EffectCases<R> {
  /** Facts to be written. */
  R keepFacts(Effect.KeepFacts effect);

  /** Facts to be written to the book of another job. */
  R keepElsewhere(Effect.KeepElsewhere effect);

  /** The other books of the bench to be looked at. */
  R readBench(Effect.ReadBench effect);

  /** A book to be begun. */
  R beginJob(Effect.BeginJob effect);

  /** A book to be opened. */
  R openBook(Effect.OpenBook effect);

  /** The open book to be closed. */
  R shutBook(Effect.ShutBook effect);

  /** The tray to be read. */
  R readTray(Effect.ReadTray effect);

  /** A draft to be kept. */
  R keepDraft(Effect.KeepDraft effect);

  /** A draft to be forgotten. */
  R dropDraft(Effect.DropDraft effect);

  /** A doubtful line to be accepted. */
  R acceptLine(Effect.AcceptLine effect);

  /** Choices to be kept. */
  R keepSettings(Effect.KeepSettings effect);

  /** A book to be left out, or to count again. */
  R leaveOut(Effect.LeaveOut effect);

  /** Her bench to be changed. */
  R changeBench(Effect.ChangeBench effect);

  /** Facts for the drawer's book. */
  R keepInDrawer(Effect.KeepInDrawer effect);

  /** A student's book to be read. */
  R openStudent(Effect.OpenStudent effect);

  /** Facts for a student's book. */
  R keepOfStudent(Effect.KeepOfStudent effect);

  /** What a student made, to be brought over. */
  R bringOver(Effect.BringOver effect);

  /** A class to be read. */
  R readClass(Effect.ReadClass effect);

  /** What the place says to be copied. */
  R copy(Effect.Copy effect);

  /** The bell. */
  R ringBell(Effect.RingBell effect);

  /** The end. */
  R leave(Effect.Leave effect);

  /** A text into a file of hers. */
  R writeOut(Effect.WriteOut effect);

  /** Rows out of a file. */
  R readRows(Effect.ReadRows effect);
}
