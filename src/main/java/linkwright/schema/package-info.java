/**
 * What may stand in each sort of file, as JSON Schemas (draft 2020-12), for editors and other
 * programs. Start from {@link linkwright.schema.FileSchemas}. Words, keys of plans, settings and
 * entries are the program's own lists; the rest is written here, and a test holds it against what
 * the readers ask for. Nothing is null.
 */
package linkwright.schema;
