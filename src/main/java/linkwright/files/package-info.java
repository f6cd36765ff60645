/**
 * What stands in files, but for job books: YAML in and out with located problems, the user's folder
 * laid over the shipped data, settings and drafts. Start from {@link linkwright.files.Library}.
 * Sizes in files carry their unit; faults of the user's data and of the disk are values ({@code
 * Problem}, {@code Read.Bad}), never exceptions. Nothing is null.
 */
package linkwright.files;
