package linkwright.quantity;

/**
 * A part of a whole, kept as a number: 0.9 for 90 %.
 *
 * @param value the part, finite and not negative; above 1 only where a thing may exceed its whole
 */
public record Share(double value) {
  private static final String EXAMPLE = "90 %";

  /** A share below nothing, or none at all, is the programmer's fault. */
  public Share {
    if (!(value >= 0 && value <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("value must be finite and not negative, not " + value);
    }
  }

  /** Reads a part of a whole, from nothing to all of it: {@code 90 %} is {@code 0.9}. */
  public static Read<Share> read(String typed) {
    return readAny(typed)
        .flatMap(
            share ->
                share.value() <= 1
                    ? Read.good(share)
                    : Read.bad(
                        Written.quoted(typed)
                            + " is more than the whole. Write 90 % or 0.9 for nine tenths."));
  }

  /** Reads a share that may be more than the whole, such as a margin or a solder's fillet. */
  public static Read<Share> readAny(String typed) {
    return Written.read(typed, EXAMPLE)
        .flatMap(
            written ->
                switch (written.rest()) {
                  case "%", "percent", "per cent", "pct" -> Read.good(written.number() / 100);
                  case "" -> Read.good(written.number());
                  default ->
                      Read.<Double>bad(
                          Written.quoted(written.rest())
                              + " is not a share. Write it like 90 % or 0.9.");
                })
        .flatMap(value -> Written.withinReason(value, typed, "A share", 1e6))
        .map(Share::new);
  }
}
