package org.taperwright.library.exchange.table;

import java.util.Optional;

/**
 * What a column means.
 *
 * @param heading its heading as it stands in the file
 * @param field the name of the field it holds; empty for a column that is passed over
 * @param unit the unit of its numbers as people write it, where it is not the field's own
 */
public record MappedColumn(String heading, Optional<String> field, Optional<String> unit) {}
