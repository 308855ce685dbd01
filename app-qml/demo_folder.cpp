#include "app-qml/demo_folder.h"

#include "core/model/fields.h"
#include "core/model/tables.h"
#include "fixtures/demo/demo.h"
#include "sync/exchange/station.h"

weavelog::Outcome<> fillWithDemo(const std::filesystem::path& folder) {
  weavelog::demo::DemoOptions wanted;
  wanted.now = weavelog::WallClock::system().now();
  weavelog::ManualClock clock(wanted.now);
  weavelog::StationOptions options;
  options.folder = folder;
  options.device_name = demoTabletName;
  options.registry = &weavelog::model_registry();
  options.projections = {std::make_shared<weavelog::ModelTables>()};
  options.clock = &clock;
  auto station = weavelog::Station::open(std::move(options));
  if (!station) return weavelog::fail(station.error());
  const auto filled =
      weavelog::demo::fill_tablets(weavelog::demo::make_demo(wanted), {(*station)->ledger(), clock}, nullptr);
  if (!filled) return weavelog::fail(filled.error());
  return {};
}
