/**
 * YAML in and out with located problems: the fields of a file, plain values, what is wrong and
 * where. Start from {@link linkwright.files.yaml.YamlFields}. Faults of a file are values ({@code
 * Problem}, {@code Read.Bad}), never exceptions. Nothing is null.
 */
package linkwright.files.yaml;
