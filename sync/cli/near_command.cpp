#include <thread>

#include "sync/cli/commands.h"
#include "sync/net/nearby.h"
#include "sync/trust/proquint.h"

namespace weavelog::cli {
namespace {

struct NearArguments {
  int seconds = 3;
  std::vector<int> ports;
};

Outcome<Ending> near(Context& context, const NearArguments& arguments) {
  const auto hosts = context.station().devices().hosts();
  NearbySearchOptions options;
  for (const int port : arguments.ports) options.ports.push_back(static_cast<std::uint16_t>(port));
  for (const KnownHost& host : hosts) options.ports.push_back(host.address.port);
  // Everybody who answers within the time is worth showing.
  options.life = std::chrono::seconds(arguments.seconds + 1);
  options.pace = std::chrono::seconds(1);
  const NearbySearch search(std::move(options));
  std::this_thread::sleep_for(std::chrono::seconds(arguments.seconds));

  json::array list;
  std::string text;
  for (const NearbyServer& server : search.servers()) {
    const NearbyOffer& offer = server.offer;
    const bool known = claimed_host(hosts, offer).has_value();
    const std::string words = fingerprint_words(offer.fingerprint);
    list.push_back(json::object{{"name", offer.name},
                                {"event", offer.event},
                                {"address", server.address.text()},
                                {"fingerprint", to_hex(offer.fingerprint)},
                                {"words", words},
                                {"key", to_hex(offer.key)},
                                {"known", known}});
    text += std::string(known ? "* " : "  ") + offer.name +
            (offer.event.empty() ? "" : " (" + offer.event + ")") + "  " + server.address.text() + "  " +
            words + (known ? "  paired" : "  not paired yet") + "\n";
  }
  const bool nobody = list.empty();
  context.answer(
      list,
      nobody ? "no event server answers; is this device on its network? `pair` takes its address too" : text);
  return nobody ? Ending::not_found : Ending::done;
}

}  // namespace

void add_near_command(CLI::App& app, Work& chosen) {
  add_command<NearArguments>(
      app, chosen, "near", "List the event servers that answer on this network or machine", near,
      [](CLI::App& command, NearArguments& arguments) {
        command.add_option("--seconds", arguments.seconds, "How long to listen")
            ->check(CLI::Range(1, 60))
            ->capture_default_str();
        command
            .add_option("--port", arguments.ports,
                        "Ask at this port too, beside 26110 and those of the servers that are known; may be "
                        "given several times")
            ->check(CLI::Range(1, 65535));
        command.footer(
            "What they say of themselves is a hint; `pair` and `exchange` prove it. Exit code 4 if nobody "
            "answers.\n"
            "--json: an array of {name, event, address, fingerprint, words, key, known}.");
      });
}

}  // namespace weavelog::cli
