#include "app-qml/view/drop_off_wish.h"

#include <cmath>

#include "app-qml/view/figures.h"
#include "app-qml/view/model_text.h"
#include "core/desk/adjust.h"
#include "core/desk/check_setup.h"
#include "core/desk/last_time.h"
#include "core/desk/phrases.h"

namespace {

using weavelog::Unit;

constexpr std::array<std::string_view, 2> tensionFields{"mains_tension", "crosses_tension"};

std::optional<weavelog::Quantity>* tensionOf(weavelog::Agreed& agreed, std::string_view field) {
  if (field == "mains_tension") return &agreed.mains_tension;
  if (field == "crosses_tension") return &agreed.crosses_tension;
  return nullptr;
}

Unit unitOfField(std::string_view field, Unit tension) {
  const Unit fixed = weavelog::fixed_unit(field);
  return fixed == Unit::none ? tension : fixed;
}

}  // namespace

QStringList differingFields(WishLines lines) {
  QStringList names;
  for (std::size_t i = 1; i < lines.size(); ++i)
    for (const auto& change : weavelog::compare(lines[0]->asked.agreed, lines[i]->asked.agreed))
      if (!names.contains(qtext(change.name))) names.append(qtext(change.name));
  return names;
}

QVariantMap apartTexts(WishLines lines, const weavelog::Language& language) {
  constexpr qsizetype most = 4;
  QVariantMap out;
  for (const auto& name : differingFields(lines)) {
    const std::string field = name.toStdString();
    QStringList texts;
    for (const auto* line : lines) {
      weavelog::for_each_field<weavelog::Agreed>([&](weavelog::FieldTag, std::string_view one, bool, auto member) {
        if (one != field) return;
        const auto value = weavelog::to_value(line->asked.agreed.*member);
        const QString text = weavelog::is_cleared(value) ? QStringLiteral("–") : qtext(weavelog::value_words(language, field, value));
        if (!texts.contains(text)) texts.append(text);
      });
    }
    if (texts.size() > most) texts = texts.first(most) << QStringLiteral("…");
    out.insert(name, texts.join(QStringLiteral(", ")));
  }
  return out;
}

QVariantMap wishOf(WishLines lines) {
  QVariantMap out = editables(lines.empty() ? weavelog::Agreed{} : lines.front()->asked.agreed);
  const QVariantMap nothing = editables(weavelog::Agreed{});
  for (const auto& name : differingFields(lines)) out.insert(name, nothing.value(name));
  return out;
}

QVariantMap unitsOf(WishLines lines, Unit usual) {
  QVariantMap out;
  for (const auto field : tensionFields) {
    Unit unit = Unit::none;
    for (const auto* line : lines) {
      weavelog::Agreed agreed = line->asked.agreed;
      if (const auto* said = tensionOf(agreed, field); said && *said) unit = (*said)->unit;
    }
    out.insert(qtext(field), qtext(weavelog::symbol_of(unit == Unit::none ? usual : unit)));
  }
  return out;
}

QVariantList changesOf(WishLines lines, const weavelog::Language& language) {
  QVariantList all;
  for (const auto* line : lines) {
    if (!line->asked.last_time) continue;
    for (const auto& change : weavelog::compare(*line->asked.last_time, line->asked.agreed)) {
      const QVariantMap row{{"label", fieldLabel(language, change.name)},
                            {"before", qtext(weavelog::value_words(language, change.name, change.before))},
                            {"after", qtext(weavelog::value_words(language, change.name, change.after))}};
      if (!all.contains(row)) all.append(row);
    }
  }
  return all;
}

bool setWish(EditedWishLines lines, const QString& field, const QVariant& value, Unit tension) {
  const std::string name = field.toStdString();
  bool taken = false;
  for (auto* line : lines)
    taken = takeEdited(line->asked.agreed, name, value, unitOfField(name, tension)) || taken;
  return taken;
}

void copyWish(const weavelog::Agreed& from, weavelog::Agreed& to, const QString& field) {
  const std::string name = field.toStdString();
  weavelog::for_each_field<weavelog::Agreed>([&](weavelog::FieldTag, std::string_view one, bool, auto member) {
    if (one == name) to.*member = from.*member;
  });
}

void stepWish(EditedWishLines lines, const QString& field, const QString& by, const QString& least, const QString& most, Unit usual) {
  const std::string name = field.toStdString();
  for (auto* line : lines) {
    const QString figure = editables(line->asked.agreed).value(field).toString();
    const auto* said = tensionOf(line->asked.agreed, name);
    if (!figure.isEmpty())
      takeEdited(line->asked.agreed, name, Figures::stepped(figure, by, least, most),
                 said && *said ? (*said)->unit : unitOfField(name, usual));
  }
}

void setWishUnit(EditedWishLines lines, const QString& field, Unit unit) {
  for (auto* line : lines) {
    auto* said = tensionOf(line->asked.agreed, field.toStdString());
    if (said && *said) (*said)->unit = unit;
  }
}

weavelog::Outcome<> adjustWish(EditedWishLines lines, const QString& part, const weavelog::Decimal& by,
                               Unit usual) {
  weavelog::TensionChange change;
  change.part = part == QLatin1String("mains") ? weavelog::StringPart::mains : weavelog::StringPart::crosses;
  const std::string field = part.toStdString() + "_tension";
  for (auto* line : lines) {
    const auto* said = tensionOf(line->asked.agreed, field);
    change.by = {by, said && *said ? (*said)->unit : usual};
    auto changed = weavelog::adjusted(line->asked.agreed, change);
    if (!changed) return weavelog::fail(changed.error());
    line->asked.agreed = std::move(*changed);
    // 25.0 and 25 are one tension; what was said is kept where it was a whole step.
    if (auto* now = tensionOf(line->asked.agreed, field); now && *now)
      (*now)->amount = (*now)->amount.trimmed();
  }
  return {};
}

QStringList usualSteps(Unit unit) {
  if (unit == Unit::newton) return {"-10", "-5", "5", "10"};
  if (unit == Unit::pound_force) return {"-2", "-1", "1", "2"};
  return {"-1", "-0.5", "0.5", "1"};
}

QString usualFirst(std::string_view field, Unit tension) {
  constexpr weavelog::SetupLimits limits;
  if (field.ends_with("_gauge")) return QString::number((limits.usual_gauge_low_mm + limits.usual_gauge_high_mm) / 2);
  if (!field.ends_with("_tension")) return {};
  const auto unit = weavelog::in_newtons(weavelog::Quantity{{1, 0}, tension});
  const auto kilogram = weavelog::in_newtons(weavelog::Quantity{{1, 0}, Unit::kilogram_force});
  if (!unit || !kilogram) return {};
  const double round = tension == Unit::newton ? 5 : 1;
  return QString::number(std::round((limits.usual_low_kg + limits.usual_high_kg) / 2 * *kilogram / *unit / round) * round);
}

void sameStringForCrosses(EditedWishLines lines) {
  for (auto* line : lines) {
    auto& wish = line->asked.agreed;
    wish.crosses_string = wish.mains_string;
    wish.crosses_gauge = wish.mains_gauge;
    wish.crosses_supply = wish.mains_supply;
    wish.crosses_owner = wish.mains_owner;
  }
}
