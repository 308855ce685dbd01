#pragma once

#include <QString>

#include <cstdint>
#include <string>

#include "app-qml/view/work.h"
#include "core/base/outcome.h"

// Amounts between people and the core: whole minor units there, text of the screens' language here.

// "25,50 EUR".
[[nodiscard]] QString moneyText(const Work& work, std::int64_t minor, const std::string& currency);
// "25.50", a point for the decimal sign, as Digits takes it.
[[nodiscard]] QString moneyDigits(std::int64_t minor, const std::string& currency);
// "25,50" as it is typed in the screens' language, without marks between thousands.
[[nodiscard]] QString moneyTyped(const Work& work, std::int64_t minor, const std::string& currency);
// What a person typed as minor units. Faults: those of minor_from, with words of the screens' language.
[[nodiscard]] weavelog::Outcome<std::int64_t> moneyFrom(const QString& typed, const std::string& currency);
