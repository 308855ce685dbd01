#pragma once

#include "app-qml/arguments.h"
#include "app-qml/view/app_device.h"

// What `weavelog --paper` does: lays the paper out of today's event and writes it. Faults: those of makePaper() and writePdf();
// not_found (no such player, none of the tag numbers is there); bad_input (the paper is not printed on that roll).
[[nodiscard]] weavelog::Outcome<> writePaper(const Arguments& arguments, AppDevice& device);
