/**
 * Everything that touches the disk: YAML in and out with located problems, the user's folder laid
 * over the shipped data, the job book and its lock. Start from {@link linkwright.files.BookFile}
 * for the job book. Sizes in files carry their unit; faults of the user's data and of the disk are
 * values ({@code Problem}, {@code Read.Bad}), never exceptions. Nothing is null.
 */
package linkwright.files;
