#pragma once
// What a program does with memory that was freed.

namespace weavelog {

/// From now on up to 16 MB at the end of the heap, and pieces of up to 1 MB, are kept for what comes next in place of being given back to
/// the system: taking in one batch after another would otherwise fetch the same megabytes anew each time. Called once at the start of a
/// program; does nothing where the C library knows no such thing.
void keep_freed_memory();

}  // namespace weavelog
