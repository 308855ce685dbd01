#pragma once

#include <QString>

#include "core/base/csv.h"

// What is wrong with a table or with one of its rows, and what to do about it, in the language of the screens: "Line 4, column 3: there are 3 fields
// where the first line has 2. ..."
[[nodiscard]] QString csvFaultText(const weavelog::CsvFault& fault);
