#include "app-qml/view/drop_off_state.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "app-qml/view/model_text.h"

namespace {

// Integers stand as text: a JSON number would lose the last digits of a time.
QJsonValue toJson(const weavelog::Value& value) {
  if (const auto* number = std::get_if<std::int64_t>(&value)) return QString::number(*number);
  if (const auto* said = std::get_if<weavelog::Quantity>(&value))
    return QJsonArray{qtext(said->amount.text()), static_cast<int>(said->unit)};
  if (const auto* text = std::get_if<std::string>(&value)) return qtext(*text);
  if (const auto* id = std::get_if<weavelog::EntityId>(&value)) return idText(*id);
  if (const auto* book = std::get_if<weavelog::BookId>(&value)) return idText(*book);
  return {};
}

template <class S>
QJsonObject toJson(const S& held) {
  QJsonObject out;
  weavelog::for_each_field<S>([&](weavelog::FieldTag, std::string_view name, bool, auto member) {
    const auto value = weavelog::to_value(held.*member);
    if (!weavelog::is_cleared(value)) out.insert(qtext(name), toJson(value));
  });
  return out;
}

template <class S>
S structFrom(const QJsonObject& json) {
  S out;
  weavelog::for_each_field<S>([&](weavelog::FieldTag, std::string_view name, bool, auto member) {
    const QJsonValue value = json.value(qtext(name));
    if (value.isUndefined()) return;
    auto& target = out.*member;
    using Type = std::remove_reference_t<decltype(target)>;
    if constexpr (std::is_same_v<Type, std::string>) {
      target = value.toString().toStdString();
    } else if constexpr (std::is_same_v<Type, std::optional<weavelog::Quantity>>) {
      const auto said = value.toArray();
      if (const auto amount = weavelog::Decimal::parse(said.at(0).toString().toStdString()))
        target = weavelog::Quantity{*amount, static_cast<weavelog::Unit>(said.at(1).toInt())};
    } else if constexpr (std::is_same_v<Type, weavelog::EntityId> || std::is_same_v<Type, weavelog::BookId>) {
      target = idFrom<Type>(value.toString());
    } else if constexpr (std::is_same_v<Type, std::optional<std::int64_t>> || std::is_enum_v<Type>) {
      bool number = false;
      const std::int64_t read = value.toString().toLongLong(&number);
      if (number) weavelog::from_value(weavelog::Value{read}, target);
    }
  });
  return out;
}

QJsonObject toJson(const DropOffState::Line& line) {
  QJsonObject out{{"racket", idText(line.asked.racket)},
                  {"agreed", toJson(line.asked.agreed)},
                  {"setup", idText(line.asked.setup)},
                  {"keepAs", qtext(line.asked.keep_as)},
                  {"picked", line.picked}};
  if (line.asked.made) out.insert("made", toJson(*line.asked.made));
  if (line.asked.last_time) out.insert("lastTime", toJson(*line.asked.last_time));
  return out;
}

DropOffState::Line lineFrom(const QJsonObject& json) {
  DropOffState::Line line;
  line.asked.racket = idFrom<weavelog::EntityId>(json["racket"].toString());
  line.asked.agreed = structFrom<weavelog::Agreed>(json["agreed"].toObject());
  line.asked.setup = idFrom<weavelog::EntityId>(json["setup"].toString());
  line.asked.keep_as = json["keepAs"].toString().toStdString();
  line.picked = json["picked"].toBool();
  if (json.contains("made")) line.asked.made = structFrom<weavelog::Racket>(json["made"].toObject());
  if (json.contains("lastTime"))
    line.asked.last_time = structFrom<weavelog::Agreed>(json["lastTime"].toObject());
  return line;
}

QJsonObject toJson(const DropOffState::Settled& settled) {
  return {{"entity", idText(settled.entity)},
          {"field", qtext(settled.field)},
          {"seen", QJsonArray::fromStringList(settled.seen)},
          {"answer", toJson(settled.answer)}};
}

DropOffState::Settled settledFrom(const QJsonObject& json) {
  DropOffState::Settled out;
  out.entity = idFrom<weavelog::EntityId>(json["entity"].toString());
  out.field = json["field"].toString().toStdString();
  for (const auto& one : json["seen"].toArray()) out.seen.append(one.toString());
  out.answer = structFrom<weavelog::Agreed>(json["answer"].toObject());
  return out;
}

QJsonObject toJson(const DropOffState::Asked& asked) {
  return {{"entity", idText(asked.entity)},
          {"field", qtext(asked.field)},
          {"seen", QJsonArray::fromStringList(asked.seen)},
          {"closed", asked.closed},
          {"unlike", asked.unlike}};
}

DropOffState::Asked askedFrom(const QJsonObject& json) {
  DropOffState::Asked out;
  out.entity = idFrom<weavelog::EntityId>(json["entity"].toString());
  out.field = json["field"].toString().toStdString();
  for (const auto& one : json["seen"].toArray()) out.seen.append(one.toString());
  out.closed = json["closed"].toBool();
  out.unlike = json["unlike"].toString();
  return out;
}

}  // namespace

QByteArray toBytes(const std::vector<DropOffState>& states) {
  QJsonArray all;
  for (const auto& state : states) {
    QJsonArray lines;
    for (const auto& line : state.lines) lines.append(toJson(line));
    QJsonArray settled;
    for (const auto& one : state.settled) settled.append(toJson(one));
    QJsonArray asked;
    for (const auto& one : state.asked) asked.append(toJson(one));
    all.append(QJsonObject{{"id", state.id},
                           {"book", idText(state.book)},
                           {"fresh", state.fresh},
                           {"entry", idText(state.entry)},
                           {"person", toJson(state.person)},
                           {"asWhole", state.asWhole},
                           {"dropOff", toJson(state.dropOff)},
                           {"lines", lines},
                           {"settled", settled},
                           {"asked", asked},
                           {"language", state.language},
                           {"consent", static_cast<int>(state.consent)},
                           {"begun", QString::number(state.begun)}});
  }
  return QJsonDocument(all).toJson(QJsonDocument::Compact);
}

std::vector<DropOffState> dropOffsFrom(const QByteArray& bytes) {
  std::vector<DropOffState> states;
  for (const auto& value : QJsonDocument::fromJson(bytes).array()) {
    const QJsonObject json = value.toObject();
    DropOffState state;
    state.id = json["id"].toString();
    state.book = idFrom<weavelog::BookId>(json["book"].toString());
    if (state.id.isEmpty() || !state.book) continue;
    state.fresh = json["fresh"].toBool();
    state.entry = idFrom<weavelog::EntityId>(json["entry"].toString());
    state.person = structFrom<weavelog::Person>(json["person"].toObject());
    state.asWhole = json["asWhole"].toBool();
    state.dropOff = structFrom<weavelog::DropOff>(json["dropOff"].toObject());
    for (const auto& line : json["lines"].toArray()) state.lines.push_back(lineFrom(line.toObject()));
    for (const auto& one : json["settled"].toArray()) state.settled.push_back(settledFrom(one.toObject()));
    for (const auto& one : json["asked"].toArray()) state.asked.push_back(askedFrom(one.toObject()));
    state.language = json["language"].toString();
    state.consent = static_cast<weavelog::ConsentChoice>(json["consent"].toInt());
    state.begun = json["begun"].toString().toLongLong();
    states.push_back(std::move(state));
  }
  return states;
}
