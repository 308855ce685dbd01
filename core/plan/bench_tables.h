#pragma once
// People, players, wishes and pins out of tables (DEVELOPERS.md, "Tables of a plan"). Lists in a cell are divided by |.

#include "core/plan/home_benches.h"

namespace weavelog {

/// Columns stringer, bench, machine, skills, languages, most (rackets a day), days ("1-4|6"); only stringer is required. A bench without a
/// name is called after stringer and machine. Faults, with the place: as read_csv(); bad_input (no stringer, a number that is none).
[[nodiscard]] Outcome<std::vector<HomeBench>> read_benches(std::string_view bytes, std::string_view source = {});
/// Columns player, rackets (per match), skills, languages, before; only player is required.
[[nodiscard]] Outcome<std::vector<BenchPerson>> read_bench_people(std::string_view bytes, std::string_view source = {});
/// Columns player, wish (only, never), with.
[[nodiscard]] Outcome<std::vector<BenchWish>> read_bench_wishes(std::string_view bytes, std::string_view source = {});
/// Columns player, bench.
[[nodiscard]] Outcome<std::vector<BenchPin>> read_bench_pins(std::string_view bytes, std::string_view source = {});

}  // namespace weavelog
