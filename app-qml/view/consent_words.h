#pragma once

#include <QVariant>

#include "core/base/language.h"

// What the consent question is asked with, in the player's language: {title, about, later, keep, open,
// answer, change, yes, no, choices: [{value, text}]}. The sentences of the choices are those that are stored.
// `withdrawable`: something is held already, so that it can be withdrawn.
[[nodiscard]] QVariantMap consentWords(const weavelog::Language& language, bool withdrawable);
