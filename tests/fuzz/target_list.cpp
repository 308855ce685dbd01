#include "tests/fuzz/target_list.h"

namespace weavelog::fuzz {
namespace {

std::map<std::string, std::size_t>& places() {
  static std::map<std::string, std::size_t> held;
  return held;
}

}  // namespace

void note_reached(const char* place) { ++places()[place]; }
const std::map<std::string, std::size_t>& reached() { return places(); }

std::span<const Target> targets() {
  static constexpr Target all[] = {
      {"entry", run_entry, seeds_entry},
      {"state", run_state, seeds_state},
      {"frame", run_frame, seeds_frame},
      {"message", run_message, seeds_message},
      {"batch", run_batch, seeds_batch},
      {"greeting", run_greeting, seeds_greeting},
      {"session", run_session, seeds_session},
      {"reconcile", run_reconcile, seeds_reconcile},
      {"entry_list", run_entry_list, seeds_entry_list},
      {"people", run_people, seeds_people},
      {"price_list", run_price_list, seeds_price_list},
      {"past_jobs", run_past_jobs, seeds_past_jobs},
      {"fields_json", run_fields_json, seeds_fields_json},
      {"plan_draw", run_plan_draw, seeds_plan_draw},
      {"plan_benches", run_plan_benches, seeds_plan_benches},
      {"plan_day", run_plan_day, seeds_plan_day},
      {"bed_setup", run_bed_setup, seeds_bed_setup},
      {"recording", run_recording, seeds_recording},
      {"readings", run_readings, seeds_readings},
      {"gauge", run_gauge, seeds_gauge},
      {"words", run_words, seeds_words},
      {"tag", run_tag, seeds_tag},
      {"languages", run_languages, seeds_languages},
      {"near", run_near, seeds_near},
      {"record", run_record, seeds_record},
      {"bundle", run_bundle, seeds_bundle},
      {"card", run_card, seeds_card},
      {"database", run_database, seeds_database},
      {"device", run_device, seeds_device},
  };
  return all;
}

}  // namespace weavelog::fuzz
