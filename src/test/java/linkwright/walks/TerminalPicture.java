package linkwright.walks;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a terminal would show after the bytes written to it: a reader of the few sequences that
 * Linkwright writes. Whatever else it meets, it keeps in {@link #unknown}, for tests to refuse.
 */
final class TerminalPicture {
  private static final int ALTERNATE = 1049;
  private static final int CURSOR = 25;

  private int columns;
  private int rows;
  private String[][] front;
  private String[][] normal;
  private int x;
  private int y;
  private int savedX;
  private int savedY;
  private int bells;
  private final Set<Integer> modes = new TreeSet<>(Set.of(CURSOR));
  private final Set<String> styles = new TreeSet<>();
  private final List<String> unknown = new ArrayList<>();
  private final StringBuilder sequence = new StringBuilder();
  private final ByteBuffer character = ByteBuffer.allocate(8);

  TerminalPicture(int columns, int rows) {
    this.columns = columns;
    this.rows = rows;
    this.front = blank();
    this.normal = front;
  }

  private String[][] blank() {
    String[][] cells = new String[rows][columns];
    for (String[] row : cells) {
      Arrays.fill(row, " ");
    }
    return cells;
  }

  void resize(int newColumns, int newRows) {
    columns = newColumns;
    rows = newRows;
    boolean alternate = isAlternate();
    normal = blank();
    front = alternate ? blank() : normal;
    x = Math.min(x, columns - 1);
    y = Math.min(y, rows - 1);
  }

  void take(byte[] bytes, int length) {
    for (int i = 0; i < length; i++) {
      take(bytes[i]);
    }
  }

  private void take(byte b) {
    if (sequence.length() > 0) {
      takeSequence((char) (b & 0xFF));
    } else if (b < 0) {
      takePart(b);
    } else {
      switch (b) {
        case 0x1B -> sequence.append((char) b);
        case 0x07 -> bells++;
        case '\r' -> x = 0;
        case '\n' -> lineFeed();
        case '\t' -> x = Math.min(columns - 1, x / 8 * 8 + 8);
        case '\b' -> x = Math.max(0, x - 1);
        default -> {
          if (b >= ' ') {
            put(String.valueOf((char) b), 1);
          } else {
            unknown.add("control " + b);
          }
        }
      }
    }
  }

  private void takePart(byte b) {
    character.put(b);
    int first = character.get(0) & 0xFF;
    int needed = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
    if (character.position() == needed) {
      String text = new String(character.array(), 0, needed, StandardCharsets.UTF_8);
      character.clear();
      put(text, isWide(text.codePointAt(0)) ? 2 : 1);
    }
  }

  /** The wide letters that the walks use: CJK, kana, Hangul syllables. */
  private static boolean isWide(int c) {
    return (c >= 0x3001 && c <= 0x9FFF)
        || (c >= 0xAC00 && c <= 0xD7A3)
        || (c >= 0xFF01 && c <= 0xFF60);
  }

  private void put(String text, int width) {
    if (x + width > columns) {
      x = 0;
      lineFeed();
    }
    front[y][x] = text;
    if (width == 2) {
      front[y][x + 1] = "";
    }
    x += width;
  }

  private void lineFeed() {
    if (y < rows - 1) {
      y++;
    } else {
      System.arraycopy(front, 1, front, 0, rows - 1);
      front[rows - 1] = new String[columns];
      Arrays.fill(front[rows - 1], " ");
    }
  }

  private void takeSequence(char c) {
    sequence.append(c);
    boolean control = sequence.charAt(1) == '[';
    if (control && sequence.length() > 2 && c >= 0x40 && c <= 0x7E) {
      String parameters = sequence.substring(2, sequence.length() - 1);
      sequence.setLength(0);
      control(parameters, c);
    } else if (!control) {
      unknown.add("ESC " + sequence.substring(1));
      sequence.setLength(0);
    }
  }

  private void control(String parameters, char last) {
    switch (last) {
      case 'H' -> {
        String[] place = parameters.split(";", -1);
        y = clamp(place[0].isEmpty() ? 1 : Integer.parseInt(place[0]), rows);
        x = clamp(place.length < 2 ? 1 : Integer.parseInt(place[1]), columns);
      }
      case 'J' -> {
        for (String[] row : front) {
          Arrays.fill(row, " ");
        }
        if (!parameters.equals("2")) {
          unknown.add("erase " + parameters);
        }
      }
      case 'm' -> styles.add(parameters);
      case 'h', 'l' -> mode(parameters, last == 'h');
      case 'c' -> {
        // Primary device attributes (ECMA-48 5th ed., 8.3.24 DA): asked, shown nowhere, and here
        // left without an answer, as by a terminal that knows none.
        if (!parameters.isEmpty()) {
          unknown.add("ESC [ " + parameters + last);
        }
      }
      default -> unknown.add("ESC [ " + parameters + last);
    }
  }

  private static int clamp(int told, int most) {
    return Math.max(0, Math.min(most, told) - 1);
  }

  private void mode(String parameters, boolean on) {
    if (!parameters.matches("\\?\\d+")) {
      unknown.add("mode " + parameters);
      return;
    }
    int mode = Integer.parseInt(parameters.substring(1));
    if (mode == ALTERNATE && on != modes.contains(ALTERNATE)) {
      front = on ? blank() : normal;
      if (on) {
        savedX = x;
        savedY = y;
      } else {
        x = Math.min(savedX, columns - 1);
        y = Math.min(savedY, rows - 1);
      }
    }
    if (on) {
      modes.add(mode);
    } else {
      modes.remove(mode);
    }
  }

  boolean isAlternate() {
    return modes.contains(ALTERNATE);
  }

  /** Private modes that are on: 25 is a visible cursor, 1049 the alternate screen. */
  Set<Integer> modes() {
    return new TreeSet<>(modes);
  }

  /** All styles that were ever asked for, as their parameters. */
  Set<String> styles() {
    return new TreeSet<>(styles);
  }

  /** Sequences and controls that this reader doesn't know. */
  List<String> unknown() {
    return List.copyOf(unknown);
  }

  int bells() {
    return bells;
  }

  /** The rows shown, spaces at their ends left off. */
  String text() {
    StringBuilder text = new StringBuilder();
    for (String[] row : front) {
      text.append(String.join("", row).stripTrailing()).append('\n');
    }
    return text.toString();
  }
}
