#pragma once
// One pair of functions a target: what it does with an input, and inputs to begin with.

#include "tests/fuzz/target.h"

namespace weavelog::fuzz {

// entry.cpp
void run_entry(ByteView input);
std::vector<Bytes> seeds_entry();
void run_state(ByteView input);
std::vector<Bytes> seeds_state();
// frame.cpp
void run_frame(ByteView input);
std::vector<Bytes> seeds_frame();
void run_message(ByteView input);
std::vector<Bytes> seeds_message();
// batch.cpp
void run_batch(ByteView input);
std::vector<Bytes> seeds_batch();
// greeting.cpp
void run_greeting(ByteView input);
std::vector<Bytes> seeds_greeting();
// session.cpp
void run_session(ByteView input);
std::vector<Bytes> seeds_session();
// reconcile.cpp
void run_reconcile(ByteView input);
std::vector<Bytes> seeds_reconcile();
// imports.cpp
void run_entry_list(ByteView input);
std::vector<Bytes> seeds_entry_list();
void run_people(ByteView input);
std::vector<Bytes> seeds_people();
void run_price_list(ByteView input);
std::vector<Bytes> seeds_price_list();
void run_past_jobs(ByteView input);
std::vector<Bytes> seeds_past_jobs();
void run_fields_json(ByteView input);
std::vector<Bytes> seeds_fields_json();
// plans.cpp
void run_plan_draw(ByteView input);
std::vector<Bytes> seeds_plan_draw();
void run_plan_benches(ByteView input);
std::vector<Bytes> seeds_plan_benches();
void run_plan_day(ByteView input);
std::vector<Bytes> seeds_plan_day();
// beds.cpp
void run_bed_setup(ByteView input);
std::vector<Bytes> seeds_bed_setup();
void run_recording(ByteView input);
std::vector<Bytes> seeds_recording();
// quality.cpp
void run_readings(ByteView input);
std::vector<Bytes> seeds_readings();
void run_gauge(ByteView input);
std::vector<Bytes> seeds_gauge();
// words.cpp
void run_words(ByteView input);
std::vector<Bytes> seeds_words();
void run_tag(ByteView input);
std::vector<Bytes> seeds_tag();
void run_languages(ByteView input);
std::vector<Bytes> seeds_languages();
// near.cpp
void run_near(ByteView input);
std::vector<Bytes> seeds_near();
void run_record(ByteView input);
std::vector<Bytes> seeds_record();
// carry.cpp
void run_bundle(ByteView input);
std::vector<Bytes> seeds_bundle();
void run_card(ByteView input);
std::vector<Bytes> seeds_card();
// database.cpp
void run_database(ByteView input);
std::vector<Bytes> seeds_database();
// device_file.cpp
void run_device(ByteView input);
std::vector<Bytes> seeds_device();

}  // namespace weavelog::fuzz
