package linkwright.coach.kernel;

/**
 * One answer for each kind of message.
 *
 * @param <R> what is answered
 */
public interface MessageCases<R> {
  /** A key. */
  R keyPressed(Message.KeyPressed message);

  /** An act. */
  R actChosen(Message.ActChosen message);

  /** Pasted text. */
  R pasted(Message.Pasted message);

  /** A row that was clicked. */
  R rowChosen(Message.RowChosen message);

  /** A field that was clicked. */
  R fieldChosen(Message.FieldChosen message);

  /** The time. */
  R ticked(Message.Ticked message);

  /** Another room to draw in. */
  R resized(Message.Resized message);

  /** An open book. */
  R jobOpened(Message.JobOpened message);

  /** A book that did not open. */
  R jobNotOpened(Message.JobNotOpened message);

  /** Entries that are on the disk. */
  R kept(Message.Kept message);

  /** Entries that are not. */
  R notKept(Message.NotKept message);

  /** The other books of the bench. */
  R othersRead(Message.OthersRead message);

  /** Entries that are in another job's book. */
  R keptElsewhere(Message.KeptElsewhere message);

  /** Trouble. */
  R troubled(Message.Troubled message);

  /** The jobs at hand. */
  R trayRead(Message.TrayRead message);

  R trayGoesOn(Message.TrayGoesOn message);

  /** Choices that are on the disk, or what stood in the way. */
  R settingsKept(Message.SettingsKept message);

  /** The way to a place. */
  R led(Message.Led message);

  /** A student's book. */
  R studentRead(Message.StudentRead message);

  /** A class. */
  R classRead(Message.ClassRead message);

  /** What became of copying. */
  R copied(Message.Copied message);

  /** The end. */
  R ended(Message.Ended message);

  /** Her bench as it is now. */
  R benchRead(Message.BenchRead message);

  /** What lies in the drawer now. */
  R drawerRead(Message.DrawerRead message);

  /** What became of a file that was to be written. */
  R writtenOut(Message.WrittenOut message);

  /** Rows out of a file. */
  R rowsRead(Message.RowsRead message);
}
