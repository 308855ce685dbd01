#pragma once
// The benches, each saying its figures as it has them.

#include <filesystem>
#include <string>

#include "tests/bench/report.h"

namespace weavelog::bench {

struct Setting {
  std::filesystem::path folder;  ///< below which scratch folders are made: on the disk that is measured
  std::string program;           ///< this one, for the process that imports
  bool full = false;             ///< the sizes of the targets, rather than a quick look
};

/// One action = one durable transaction; on disk, and in memory (/dev/shm) where durability costs nothing.
void local_write(Report& report, const Setting& setting);
/// Players' books into an empty tablet in a process of its own; and then the screens on what came.
void cold_import(Report& report, const Setting& setting);
/// The importing process: pairs, imports, uses the data meanwhile, and says how it went in one line.
int import_here(const std::string& code, const std::filesystem::path& folder);
/// Two that met before, one changed tension; and many books of which five changed.
void exchanges(Report& report, const Setting& setting);
/// The server at rest, and fifty tablets that push live.
void crowd(Report& report, const Setting& setting);
/// A played event, then a real server and tablets live at it: the screens' data, a stage changed by scanning a tag, the board.
void room_day(Report& report, const Setting& setting);
/// Odds and home benches of draws of 32 to 256, each beside a plain way to the same.
void plan(Report& report, const Setting& setting);
/// A day on benches, a rush, promises: 100, 500, 2,000 rackets.
void plan_of_day(Report& report, const Setting& setting);
/// Solves of a string bed, and tones out of hundreds of made-up recordings: how many right, wrong, not known.
void string_bed(Report& report, const Setting& setting);
/// A room's charts over ten thousand weeks, with nothing wrong and with what is planted; statistics.
void quality(Report& report, const Setting& setting);
/// Invented people matched: mistakes, questions, calibration, by kind of noise; and how long it takes.
void match(Report& report, const Setting& setting);
/// A tablet of 5,000 players arrives at an event of 300 entries: pairing, list, matching, what is ticked, until both agree.
void arrival(Report& report, const Setting& setting);

}  // namespace weavelog::bench
