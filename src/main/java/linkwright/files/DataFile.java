package linkwright.files;

/**
 * A file's text before it is read.
 *
 * @param name as the user knows it, for messages
 * @param bytes what is in it
 */
record DataFile(String name, byte[] bytes) {}
