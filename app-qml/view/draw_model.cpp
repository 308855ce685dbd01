#include "app-qml/view/draw_model.h"

#include <QDateTime>
#include <QFile>
#include <QFileInfo>
#include <QQmlEngine>
#include <QTimeZone>

#include <algorithm>
#include <tuple>

#include "app-qml/view/app_device.h"
#include "app-qml/view/csv_words.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/desk/room_benches.h"

namespace {

using weavelog::FaultCode;

constexpr qint64 mostBytes = 1 << 20;  // of a table; a draw of 256 has some kilobytes

QString roundTitle(const weavelog::HeldDraw& draw, int round) {
  const bool qualifying = draw.sheet.now.kind == weavelog::DrawKind::qualifying;
  const int left = draw.rounds() - round;
  if (draw.sheet.now.kind == weavelog::DrawKind::round_robin) return DrawModel::tr("Round %1").arg(round);
  if (qualifying) return left == 0 ? DrawModel::tr("Last round of qualifying") : DrawModel::tr("Qualifying, round %1").arg(round);
  switch (left) {
    case 0: return DrawModel::tr("Final");
    case 1: return DrawModel::tr("Semi-finals");
    case 2: return DrawModel::tr("Quarter-finals");
    default: return DrawModel::tr("Round %1").arg(round);
  }
}

QString roundShort(const weavelog::HeldDraw& draw, int round) {
  const int left = draw.sheet.now.kind != weavelog::DrawKind::knock_out ? 9 : draw.rounds() - round;
  switch (left) {
    case 0: return DrawModel::tr("Final");
    case 1: return QStringLiteral("1/2");
    case 2: return QStringLiteral("1/4");
    default: return QString::number(round);
  }
}

// As a person would type it.
QString typedTime(const Work& work, const std::optional<weavelog::UnixMs>& at) {
  if (!at) return {};
  const QTimeZone zone(QByteArray::fromStdString(work.zone()));
  return QDateTime::fromMSecsSinceEpoch(*at, zone.isValid() ? zone : QTimeZone::utc()).toString(QStringLiteral("yyyy-MM-ddTHH:mm"));
}

// "2" of a seed; how somebody came in.
QString markOf(const weavelog::BracketLine& line) {
  if (line.seed) return QString::number(*line.seed);
  switch (line.entry) {
    case weavelog::DrawEntry::wild_card: return DrawModel::tr("wild card");
    case weavelog::DrawEntry::qualifier: return DrawModel::tr("qualifier");
    case weavelog::DrawEntry::lucky_loser: return DrawModel::tr("lucky loser");
    case weavelog::DrawEntry::alternate: return DrawModel::tr("alternate");
    case weavelog::DrawEntry::direct: return {};
  }
  return {};
}

QVariantMap sideOf(const weavelog::HeldDraw& draw, std::optional<std::size_t> line, std::optional<std::size_t> winner,
                   const std::map<std::string, std::string>& stringers) {
  QVariantMap out{{"line", 0}, {"name", QString()}, {"mark", QString()}, {"known", false}, {"bye", false}, {"won", false}, {"lost", false}, {"out", false},
                  {"bench", QString()}};
  if (!line) return out;
  const auto& one = draw.line(*line);
  out["line"] = static_cast<int>(*line) + 1;
  out["name"] = qtext(one.bye ? std::string() : weavelog::line_name(one));
  out["mark"] = markOf(one);
  out["known"] = !one.bye && !one.player.empty();
  out["bye"] = one.bye;
  out["won"] = winner == line;
  out["lost"] = winner && winner != line;
  out["out"] = one.withdrawn;
  if (const auto stringer = stringers.find(weavelog::search_key(one.player)); stringer != stringers.end()) out["bench"] = qtext(stringer->second);
  return out;
}

}  // namespace

DrawModel::DrawModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  connect(&work_, &Work::changed, this, &DrawModel::refresh);
}

void DrawModel::setWatched(bool watched) {
  if (watched == watched_) return;
  watched_ = watched;
  emit watchedChanged();
  refresh();
}

DrawModel* DrawModel::create(QQmlEngine* engine, QJSEngine*) {
  return new DrawModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

const weavelog::HeldDraw* DrawModel::shown() const {
  const auto found = std::find_if(held_.begin(), held_.end(), [&](const auto& one) { return idText(one.sheet.id()) == draw_; });
  return found == held_.end() ? nullptr : &*found;
}

void DrawModel::setDraw(const QString& draw) {
  if (draw == draw_) return;
  draw_ = draw;
  refresh();
}

void DrawModel::refresh() {
  if (!watched_) return;
  const auto before = std::tuple(draws_, draw_, rounds_, troubles_, standing_);
  held_ = work_.event() ? weavelog::event_draws(work_.ledger(), work_.event()) : std::vector<weavelog::HeldDraw>{};
  if (shown() == nullptr) draw_ = held_.empty() ? QString() : idText(held_.front().sheet.id());
  draws_.clear();
  rounds_.clear();
  troubles_.clear();
  standing_.clear();
  for (const auto& one : held_) {
    const auto players = std::count_if(one.lines.begin(), one.lines.end(), [](const auto& line) { return !line.bye; });
    draws_.append(QVariantMap{{"id", idText(one.sheet.id())}, {"name", qtext(one.sheet.now.name)}, {"detail", tr("%n place(s)", nullptr, static_cast<int>(players))}});
  }
  if (const auto* draw = shown()) {
    for (const auto& fault : draw->troubles) troubles_.append(qtext(fault.message()));
    if (draw->group)
      for (const std::size_t place : draw->group->standing())
        standing_.append(tr("%1: %n win(s)", nullptr, static_cast<int>(draw->group->wins(place))).arg(qtext(weavelog::line_name(draw->line(place)))));
    const auto stringers = weavelog::home_stringers(work_.ledger(), work_.event());
    for (int round = 1; round <= draw->rounds(); ++round) {
      QVariantList matches;
      for (std::size_t match = 0; match < draw->matches_in(round); ++match) {
        const auto [one, other] = draw->sides(round, match);
        const auto winner = draw->winner(round, match);
        const auto* record = draw->match(round, match);
        QVariantMap out{{"round", round}, {"match", static_cast<int>(match) + 1}, {"one", sideOf(*draw, one, winner, stringers)}, {"other", sideOf(*draw, other, winner, stringers)}};
        out["decided"] = record != nullptr && record->now.winner.value_or(0) > 0;
        out["score"] = record != nullptr ? qtext(record->now.score) : QString();
        out["end"] = record != nullptr ? static_cast<int>(record->now.end) : 0;
        out["court"] = record != nullptr ? qtext(record->now.court) : QString();
        out["follows"] = QString();
        if (record != nullptr && record->now.after)
          if (const auto leading = weavelog::match_of_id(*draw, record->now.after))
            out["follows"] = QStringLiteral("%1/%2").arg(leading->first).arg(leading->second + 1);
        out["notBefore"] = record != nullptr ? typedTime(work_, record->now.not_before) : QString();
        out["when"] = record != nullptr ? work_.timeText(record->now.not_before) : QString();
        matches.append(out);
      }
      rounds_.append(QVariantMap{{"title", roundTitle(*draw, round)}, {"short", roundShort(*draw, round)}, {"matches", matches}});
    }
  }
  if (before != std::tuple(draws_, draw_, rounds_, troubles_, standing_)) emit changed();
}

bool DrawModel::bringIn(const QUrl& file, const QString& name, int qualifiers, bool group, const QString& say) {
  const QString path = file.toLocalFile();
  QFile source(path);
  if (!QFileInfo(path).isFile() || !source.open(QIODevice::ReadOnly)) {
    work_.tell({FaultCode::io, tr("The file can't be read.").toStdString(), path.toStdString(), tr("Choose another one.").toStdString()});
    return false;
  }
  const QByteArray bytes = source.read(mostBytes + 1);
  if (bytes.size() > mostBytes) {
    work_.tell({FaultCode::bad_input, tr("The file is larger than a draw can be.").toStdString(), path.toStdString(), tr("Choose another one.").toStdString()});
    return false;
  }
  const std::string_view text(bytes.constData(), static_cast<std::size_t>(bytes.size()));
  const std::string called = QFileInfo(path).fileName().toStdString();
  // What is wrong with the table itself is said in the language of the screens.
  const auto table = weavelog::read_csv_table(text, {}, called);
  if (!table || !table->faults.empty()) {
    work_.tell({FaultCode::bad_input, csvFaultText(table ? table->faults.front() : table.error()).toStdString(), called, {}});
    return false;
  }
  auto lines = group ? weavelog::read_entries(text, called) : weavelog::read_bracket(text, called);
  if (!lines) {
    work_.tell(lines.error());
    return false;
  }
  weavelog::NewDraw wanted;
  if (group) wanted.kind = weavelog::DrawKind::round_robin;
  wanted.lines = std::move(*lines);
  return add(std::move(wanted), name, qualifiers, say);
}

bool DrawModel::make(const QString& name, const QVariantList& lines, int qualifiers, bool group, const QString& say) {
  weavelog::NewDraw wanted;
  if (group) wanted.kind = weavelog::DrawKind::round_robin;
  for (const QVariant& one : lines) {
    const QVariantMap said = one.toMap();
    weavelog::BracketLine line;
    line.bye = said.value("bye").toBool();
    if (!line.bye) {
      line.player = said.value("player").toString().simplified().toStdString();
      line.partner = said.value("partner").toString().simplified().toStdString();
      if (const int seed = said.value("seed").toInt(); seed > 0) line.seed = seed;
      if (said.value("wildCard").toBool()) line.entry = weavelog::DrawEntry::wild_card;
    }
    wanted.lines.push_back(std::move(line));
  }
  return add(std::move(wanted), name, qualifiers, say);
}

bool DrawModel::add(weavelog::NewDraw wanted, const QString& name, int qualifiers, const QString& say) {
  wanted.name = name.simplified().toStdString();
  if (qualifiers > 0) wanted.kind = weavelog::DrawKind::qualifying;
  wanted.sections = qualifiers;
  if (!work_.commit(weavelog::add_draw(work_.event(), held_, wanted, work_.now()), say)) return false;
  for (const auto& one : held_)
    if (one.sheet.now.name == wanted.name) setDraw(idText(one.sheet.id()));
  return true;
}

bool DrawModel::with(const QString& say, const std::function<weavelog::Outcome<weavelog::Draft>(const weavelog::HeldDraw&)>& make) {
  const auto* draw = shown();
  return draw != nullptr && work_.commit(make(*draw), say);
}

bool DrawModel::takeAway(const QString& say) {
  return with(say, [](const auto& draw) { return weavelog::remove_draw(draw); });
}

bool DrawModel::won(int round, int line, int end, const QString& score, const QString& say) {
  if (line < 1) return false;
  return with(say, [&](const auto& draw) {
    return weavelog::note_winner(draw, {round, static_cast<std::size_t>(line - 1), static_cast<weavelog::EndOfMatch>(end), score.simplified().toStdString(),
                                        work_.who().toStdString(), work_.now()});
  });
}

bool DrawModel::takeBack(int round, int match, const QString& say) {
  if (match < 1) return false;
  return with(say, [&](const auto& draw) { return weavelog::take_back_winner(draw, round, static_cast<std::size_t>(match - 1)); });
}

bool DrawModel::withdraw(int line, const QString& say) {
  if (line < 1) return false;
  return with(say, [&](const auto& draw) { return weavelog::withdraw_line(draw, static_cast<std::size_t>(line - 1), work_.now()); });
}

bool DrawModel::putOn(int line, const QString& player, const QString& partner, const QString& say) {
  if (line < 1) return false;
  return with(say, [&](const auto& draw) -> weavelog::Outcome<weavelog::Draft> {
    const auto at = static_cast<std::size_t>(line - 1);
    if (at >= draw.lines.size()) return weavelog::fail(FaultCode::bad_input, "there is no such line");
    weavelog::BracketLine by;
    by.player = player.simplified().toStdString();
    by.partner = partner.simplified().toStdString();
    by.entry = draw.lines[at].player.empty() ? weavelog::DrawEntry::qualifier : weavelog::DrawEntry::lucky_loser;
    by.qualifier = draw.lines[at].qualifier;
    return weavelog::put_on_line(draw, at, by);
  });
}

bool DrawModel::setPlay(int round, int match, const QString& court, const QString& notBefore, const QString& follows, const QString& say) {
  if (match < 1 || shown() == nullptr) return false;
  weavelog::PlaySaid said;
  if (follows.trimmed().isEmpty()) {
    said.after = weavelog::EntityId{};
  } else {
    const QStringList parts = follows.trimmed().split(QLatin1Char('/'));
    const auto id = parts.size() == 2 ? weavelog::match_id(*shown(), parts[0].toInt(), static_cast<std::size_t>(std::max(1, parts[1].toInt()) - 1))
                                      : weavelog::Outcome<weavelog::EntityId>(weavelog::fail(
                                            FaultCode::bad_input, tr("Write round and match as 2/7.").toStdString(), follows.toStdString(), ""));
    if (!id) {
      work_.tell(id.error());
      return false;
    }
    said.after = *id;
  }
  said.court = court.simplified().toStdString();
  said.any_time = notBefore.trimmed().isEmpty();
  if (!notBefore.trimmed().isEmpty()) {
    const auto at = weavelog::moment_from(notBefore.trimmed().toStdString(), work_.zone(), work_.now());
    if (!at) {
      work_.tell(at.error());
      return false;
    }
    said.not_before = *at;
  }
  return with(say, [&](const auto& draw) { return weavelog::set_play(draw, round, static_cast<std::size_t>(match - 1), said); });
}
