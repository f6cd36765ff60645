package linkwright.terminal;

/** How many colours a place can show. */
enum ColourDepth {
  RGB,
  INDEXED,
  SIXTEEN,
  NONE
}
