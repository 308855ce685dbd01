#pragma once

#include <QString>
#include <QVariant>

#include <optional>
#include <string>
#include <string_view>

#include "core/base/id.h"
#include "core/base/language.h"
#include "core/model/field.h"
#include "core/model/player.h"

// Between the model's values and what QML handles.

[[nodiscard]] inline QString qtext(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}
template <class Tag>
[[nodiscard]] QString idText(const weavelog::Id<Tag>& id) {
  return id ? qtext(id.hex()) : QString();
}
// None for a text that is none.
template <class IdType>
[[nodiscard]] IdType idFrom(const QString& hex) {
  return IdType::from_hex(hex.toStdString()).value_or(IdType{});
}
// "12 May 2031" in the language; "" for no time.
[[nodiscard]] QString dayText(const weavelog::Language& language, const std::optional<weavelog::UnixMs>& at,
                              const std::string& zone);
// "Mains tension": the field's words at the head of a line.
[[nodiscard]] QString fieldLabel(const weavelog::Language& language, std::string_view field);
// "25 kg", "" for nothing said.
[[nodiscard]] QString saidText(const weavelog::Language& language,
                               const std::optional<weavelog::Quantity>& quantity);
// "2", maker and model beside it where they are known; "" for a racket that nothing is known of.
[[nodiscard]] QString racketText(const weavelog::Racket& racket);
// The words of a language for itself: "Deutsch". "" for none.
[[nodiscard]] QString languageName(const std::string& tag);

// A field as QML edits it: text, the digits of a quantity, or the number of a choice (0: not said).
[[nodiscard]] QVariant editable(const weavelog::Value& value);
// The same for every field of a struct, by name.
template <class S>
[[nodiscard]] QVariantMap editables(const S& held) {
  QVariantMap out;
  weavelog::for_each_field<S>([&](weavelog::FieldTag, std::string_view name, bool, auto member) {
    using Type = std::remove_reference_t<decltype(held.*member)>;
    QVariant value = editable(weavelog::to_value(held.*member));
    // A choice or a number that is not said is 0, everything else an empty text.
    constexpr bool number = std::is_enum_v<std::remove_cv_t<Type>> ||
                            std::is_same_v<std::remove_cv_t<Type>, std::optional<std::int64_t>>;
    if (!value.isValid()) value = number ? QVariant(0) : QVariant(QString());
    out.insert(qtext(name), value);
  });
  return out;
}
// Takes over what was edited; `unit` is that of a quantity that had none yet. False, and nothing changes, if
// the struct has no such field or the text is no figure where one is needed.
template <class S>
bool takeEdited(S& held, std::string_view field, const QVariant& edited, weavelog::Unit unit) {
  bool taken = false;
  weavelog::for_each_field<S>([&](weavelog::FieldTag, std::string_view name, bool, auto member) {
    if (name != field) return;
    auto& target = held.*member;
    using Type = std::remove_reference_t<decltype(target)>;
    if constexpr (std::is_same_v<Type, std::string>) {
      target = edited.toString().toStdString();
      taken = true;
    } else if constexpr (std::is_same_v<Type, std::optional<weavelog::Quantity>>) {
      if (edited.toString().isEmpty()) {
        target.reset();
        taken = true;
      } else if (const auto amount = weavelog::Decimal::parse(edited.toString().toStdString())) {
        target = weavelog::Quantity{*amount, target ? target->unit : unit};
        taken = true;
      }
    } else if constexpr (std::is_same_v<Type, std::optional<std::int64_t>>) {
      bool number = false;
      const auto value = edited.toLongLong(&number);
      if (number && value != 0) {
        target = value;
      } else {
        target.reset();
      }
      taken = number || edited.toString().isEmpty();
    } else if constexpr (std::is_enum_v<Type>) {
      target = static_cast<Type>(edited.toInt());
      taken = true;
    }
  });
  return taken;
}
