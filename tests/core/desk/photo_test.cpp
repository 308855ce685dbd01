#include "core/desk/photo.h"

#include <catch2/catch.hpp>

#include "core/desk/inspection.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("a picture is known by how its bytes begin") {
  // PNG, third edition, 5.2; ITU-T T.81, B.1.1.3: SOI is FF D8, and a marker follows.
  CHECK(picture_type(Bytes{0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0}) == "image/png");
  CHECK(picture_type(Bytes{0xff, 0xd8, 0xff, 0xe0}) == "image/jpeg");
  CHECK_FALSE(picture_type(Bytes{0xff, 0xd8}));
  CHECK_FALSE(picture_type(Bytes{'G', 'I', 'F', '8', '9', 'a'}));
  CHECK_FALSE(picture_type({}));
}

TEST_CASE("a picture belongs to a racket, and may show one finding on it") {
  Desk desk;
  const BookId book = desk.first_drop_off(2);
  const EntityId job = desk.load(book).jobs.at(0).id(), other = desk.load(book).jobs.at(1).id();
  const std::vector<FoundOnFrame> crack{{FrameFault::crack, FramePart::head, 75, FrameRemedy::string_anyway, ""}};
  desk.append(inspect(desk.load(book), job, crack, "Mara", desk.clock.now()));
  PhotoTaken taken;
  taken.content = digest_of(Bytes{1, 2, 3});
  taken.media_type = "image/jpeg";
  taken.size = 3;
  taken.by = "Mara";
  taken.at = desk.clock.now();
  const auto put = [&](const EntityId& of) { return put_photo(desk.load(book), of, taken); };
  desk.append(put(job));
  CHECK(put(job).error().code == FaultCode::bad_input);  // the same of the same
  taken.finding = desk.load(book).findings.at(0).id();
  taken.at += 1000;
  desk.append(put(job));
  CHECK(put(other).error().code == FaultCode::bad_input);
  CHECK(put(EntityId{{9}}).error().code == FaultCode::not_found);
  taken.finding = EntityId{{9}};
  CHECK(put(job).error().code == FaultCode::not_found);
  taken.finding = {};
  taken.size = 0;
  CHECK(put(other).error().code == FaultCode::bad_input);

  const PlayerRecord record = desk.load(book);
  const EntityId racket = record.job(job)->now.racket;
  REQUIRE(photos_of(record, racket).size() == 2);
  CHECK(photos_of(record, racket)[0]->now.finding == record.findings.at(0).id());
  CHECK(content_of(photos_of(record, racket)[1]->now) == digest_of(Bytes{1, 2, 3}));
  CHECK(photos_of(record, record.job(other)->now.racket).empty());
  Photo wrong;
  wrong.content = {1, 2};
  CHECK_FALSE(content_of(wrong));
}
