#pragma once
// Where the simulator's memory comes from (memory.cpp).

namespace weavelog::sim {

/// SQLite takes its memory from the same blocks as everybody else here. To be called before anything of SQLite's is.
void give_sqlite_memory();

}  // namespace weavelog::sim
