#pragma once
// The entries of a batch on their way: taken apart into columns, where like stands beside like, each id is spelt once, and what
// follows from earlier entries of the batch is not said. So they are short, and compress well. On the other side the very
// bytes are put together again; an entry of which that would not be true travels whole.

#include "core/log/archive.h"
#include "core/log/batch.h"

namespace weavelog {

/// Writes Batch::entries; its authors and books are written elsewhere.
void save_entries(OutArchive& ar, const Batch& batch);
/// Fills batch.entries, whose authors and books are there already. Throws ArchiveError. Memory stays in proportion to the bytes.
void load_entries(InArchive& ar, Batch& batch);

}  // namespace weavelog
