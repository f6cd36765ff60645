package linkwright.terminal;

/** How many colours a place can show. */
enum Depth {
  RGB,
  INDEXED,
  SIXTEEN,
  NONE
}
