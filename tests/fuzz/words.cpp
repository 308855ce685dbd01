// Short texts that people type, scan or read aloud: decimals, quantities, times, addresses, pairing codes.

#include "core/base/iso_time.h"
#include "core/base/units.h"
#include "core/base/utf8.h"
#include "sync/trust/pairing.h"
#include "sync/trust/proquint.h"
#include "tests/fuzz/target_list.h"

namespace weavelog::fuzz {

void run_words(ByteView input) {
  const std::string_view text = as_text(input);
  if (const auto decimal = Decimal::parse(text)) {
    const auto again = Decimal::parse(decimal->text());
    must_hold(again && *again == *decimal, "a decimal does not survive being written");
  }
  (void)unit_from(text);
  (void)moment_from(text, "Europe/Paris", 1'800'000'000'000);
  if (const auto address = Address::parse(text)) must_hold(Address::parse(address->text()).has_value(), "an address does not survive being written");
  if (const auto code = PairingCode::parse(text)) {
    const auto again = PairingCode::parse(code->text());
    must_hold(again && again->text() == code->text(), "a pairing code does not survive being shown");
  }
  if (const auto secret = parse_spoken_code(text)) {
    const auto again = parse_spoken_code(spoken_code(*secret));
    must_hold(again && *again == *secret, "a spoken code does not survive being read aloud");
  }
  if (const auto bytes = from_proquints(text)) {
    const auto again = from_proquints(to_proquints(*bytes));
    must_hold(again && *again == *bytes, "words do not survive being said");
  }
}

std::vector<Bytes> seeds_words() {
  PairingSecret secret{};
  secret.fill(0x5a);
  Address address;
  if (const auto parsed = Address::parse("192.0.2.7:4711")) address = *parsed;
  std::vector<Bytes> out;
  for (const std::string& text :
       {std::string("24.5"), std::string("-1,25"), std::string("24.5 kg"), std::string("2027-01-15T12:30"), std::string("+180"),
        std::string("14:05"), std::string("[2001:db8::1]:4711"), spoken_code(secret), PairingCode{address, {}, secret}.text()})
    out.emplace_back(text.begin(), text.end());
  return out;
}

}  // namespace weavelog::fuzz
