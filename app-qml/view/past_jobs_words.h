#pragma once

#include <QString>

#include <string_view>

#include "core/desk/past_jobs.h"

// What a column of ours holds, "Tension of the mains"; "Not used" for "".
[[nodiscard]] QString pastMeaning(std::string_view ours);
// Why a row was left out, in the app's language: its line, its column and what was expected there.
[[nodiscard]] QString pastFaultText(const weavelog::PastFault& fault);
