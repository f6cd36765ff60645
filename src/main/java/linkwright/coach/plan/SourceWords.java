package linkwright.coach.plan;

import linkwright.job.Sourced;

/** Where a value that was taken comes from, in words. */
final class SourceWords {
  private SourceWords() {}

  static String of(Sourced.Source source) {
    return switch (source) {
      case TYPED -> "typed";
      case BENCH -> "your bench's";
      case HANDS -> "as your books taught";
      case BENCH_AND_HANDS -> "from your bench's own and what your books taught";
      case USUAL -> "usual";
    };
  }
}
