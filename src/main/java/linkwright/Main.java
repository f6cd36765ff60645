package linkwright;

/** Starts Linkwright. */
public final class Main {
  private Main() {}

  public static void main(String[] arguments) {
    System.out.println("Linkwright");
  }
}
