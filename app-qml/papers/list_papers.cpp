#include "app-qml/papers/list_papers.h"

#include <QStringList>
#include <algorithm>
#include <map>
#include <set>

#include "app-qml/papers/list_flow.h"
#include "app-qml/papers/paper_words.h"
#include "core/base/text.h"
#include "core/desk/money.h"
#include "core/desk/phrases.h"
#include "core/desk/player_record.h"

namespace {

using weavelog::JobRow;
using weavelog::Language;
using weavelog::Stage;

constexpr std::size_t mostJobs = 20'000;

QString heading(const Language& language, const char* key) {
  return paperSay(language, key);
}

QString listedName(const JobRow& row) {
  QStringList names{words(row.family_name), words(row.given_name)};
  names.removeAll(QString());
  const QString latin = names.join(u' ');
  if (latin.isEmpty()) return words(row.native_name);
  return row.native_name.empty() || row.native_name == latin.toStdString() ? latin : stackedOnPaper({latin, words(row.native_name)});
}

QString tagText(const JobRow& row) {
  return row.tag_number ? QString::number(*row.tag_number) : QString();
}

QString tensionText(const Language& language, const JobRow& row) {
  const QString mains = saidOnPaper(language, row.mains_tension);
  const QString crosses = saidOnPaper(language, row.crosses_tension);
  if (mains.isEmpty() && crosses.isEmpty()) return {};
  const QString none = QStringLiteral("–");
  return (mains.isEmpty() ? none : mains) + QStringLiteral(" / ") + (crosses.isEmpty() ? none : crosses);
}

QString stringText(const JobRow& row) {
  if (row.crosses_string.empty() || row.crosses_string == row.mains_string) return words(row.mains_string);
  return apart(words(row.mains_string)) + QStringLiteral(" / ") + apart(words(row.crosses_string));
}

QString rushText(const Language& language, weavelog::Rush rush) {
  if (rush == weavelog::Rush::rush) return paperSay(language, "rush.rush");
  return rush == weavelog::Rush::on_court ? paperSay(language, "rush.on_court") : QString();
}

QString stageText(const Language& language, const JobRow& row) {
  const std::string key = "stage." + std::string(weavelog::name_of_choice(row.stage));
  return weavelog::desk_words().has(key) ? words(weavelog::desk_words().say(language, key)) : QString();
}

std::vector<JobRow> atStages(const weavelog::Ledger& ledger, const weavelog::BookId& event, std::initializer_list<Stage> stages) {
  std::vector<JobRow> out;
  for (const Stage stage : stages) {
    auto rows = weavelog::jobs_at_stage(ledger, event, stage, mostJobs);
    std::move(rows.begin(), rows.end(), std::back_inserter(out));
  }
  return out;
}

// Those without a time last.
bool sooner(const JobRow& a, const JobRow& b) {
  if (a.ready_by != b.ready_by) return b.ready_by ? a.ready_by && *a.ready_by < *b.ready_by : true;
  if (a.rush != b.rush) return a.rush > b.rush;
  return a.tag_number < b.tag_number;
}

// What may be paid when the rackets are collected: of each player once.
std::map<weavelog::BookId, QString> dues(const weavelog::Ledger& ledger, const PaperRequest& request, const std::vector<JobRow>& rows) {
  std::map<weavelog::BookId, QString> out;
  for (const JobRow& row : rows) {
    if (out.contains(row.book)) continue;
    QStringList amounts;
    for (const auto& account : weavelog::accounts_of(weavelog::money_of_player(ledger, request.event, row.book)))
      if (account.due() != 0) amounts.append(words(weavelog::money_words(request.language, account.due(), account.currency)));
    out[row.book] = amounts.join(QChar::LineSeparator);
  }
  return out;
}

}  // namespace

QStringList belowTitle(const weavelog::Ledger& ledger, const PaperRequest& request, const Language& language) {
  QStringList out;
  for (const auto& event : weavelog::all_events(ledger))
    if (event.book == request.event) out.append(joinedOnPaper({words(event.name), words(event.place)}));
  out.append(paperSay(language, "list.printed", {{"when", weavelog::Moment{request.now, request.zone}}}));
  return out;
}

std::function<QString(int, int)> pageNumbers(const Language& language) {
  return [language](int page, int of) { return paperSay(language, "list.page", {{"page", std::int64_t{page}}, {"of", std::int64_t{of}}}); };
}

QString serviceWords(const Language& language, const std::string& service, const std::string& note) {
  std::string key = "service." + weavelog::search_key(service);
  std::replace(key.begin(), key.end(), ' ', '_');
  const QString name = paperPhrases().has(key) ? paperSay(language, key) : words(service);
  return note.empty() ? name : apart(name) + QStringLiteral(": ") + apart(words(note));
}

std::vector<PaperPage> workList(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size) {
  const Language& language = request.language;
  auto rows = atStages(
      ledger, request.event,
      {Stage::received, Stage::inspected, Stage::waiting, Stage::cut_out, Stage::on_machine, Stage::strung, Stage::checked, Stage::stencilled});
  std::sort(rows.begin(), rows.end(), sooner);
  QStringList below = belowTitle(ledger, request, language);
  below.append(paperSay(language, "work_list.count", {{"n", static_cast<std::int64_t>(rows.size())}}));
  ListFlow flow(size, heading(language, "paper.work_list"), below, pageNumbers(language));
  const std::vector<ListColumn> columns{{heading(language, "column.ready_by"), 26, true}, {heading(language, "column.tag"), 13, true},
                                        {heading(language, "column.player"), 36},         {heading(language, "column.racket"), 28},
                                        {heading(language, "column.strings"), 38},        {heading(language, "column.tension"), 24, true},
                                        {heading(language, "column.stage"), 26}};
  std::vector<QStringList> cells;
  for (const JobRow& row : rows)
    cells.push_back({stackedOnPaper({timeOnPaper(language, row.ready_by, request.zone), rushText(language, row.rush)}), tagText(row), listedName(row),
                     joinedOnPaper({words(row.racket_label), words(row.racket_model)}), stringText(row), tensionText(language, row),
                     stackedOnPaper({stageText(language, row), words(row.stage_by)})});
  if (cells.empty()) {
    flow.paragraph(heading(language, "work_list.none"));
  } else {
    flow.table(columns, cells);
  }
  return flow.take();
}

std::vector<PaperPage> pickUpList(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size) {
  const Language& language = request.language;
  struct Ready {
    JobRow row;
    weavelog::Bytes key;
  };
  auto rows = atStages(ledger, request.event, {Stage::ready});
  const auto due = dues(ledger, request, rows);
  std::vector<Ready> sorted;
  for (JobRow& row : rows) {
    weavelog::Bytes key = weavelog::sort_key(language, listedName(row).toStdString());
    sorted.push_back({std::move(row), std::move(key)});
  }
  std::stable_sort(sorted.begin(), sorted.end(), [&](const Ready& a, const Ready& b) {
    if (!request.byTag && a.key != b.key) return a.key < b.key;
    return a.row.tag_number < b.row.tag_number;
  });
  QStringList below = belowTitle(ledger, request, language);
  below.append(paperSay(language, "pick_up_list.count", {{"n", static_cast<std::int64_t>(sorted.size())}}));
  ListFlow flow(size, heading(language, "paper.pick_up_list"), below, pageNumbers(language));
  const ListColumn player{heading(language, "column.player"), 40, true};
  const ListColumn tag{heading(language, "column.tag"), 13, true};
  std::vector<ListColumn> columns{request.byTag ? tag : player,
                                  request.byTag ? player : tag,
                                  {heading(language, "column.racket"), 32},
                                  {heading(language, "column.ready_since"), 26},
                                  {heading(language, "column.may_collect"), 30},
                                  {heading(language, "column.due"), 24, false, Qt::AlignRight}};
  if (size.page.height() > 0) columns.push_back({heading(language, "column.signature"), 30});
  std::vector<QStringList> cells;
  std::set<weavelog::BookId> told;
  for (const auto& [row, key] : sorted) {
    QString collector;
    if (const auto state = ledger.entity(row.book, row.drop_off)) collector = words(weavelog::from_state<weavelog::DropOff>(*state).collected_by);
    // An amount that stood beside each of a player's rackets would be asked for more than once.
    const QString amount = told.insert(row.book).second ? due.at(row.book) : QString();
    QStringList cell{listedName(row),
                     tagText(row),
                     joinedOnPaper({words(row.racket_label), words(row.racket_model)}),
                     timeOnPaper(language, row.stage_at, request.zone),
                     collector,
                     amount};
    if (request.byTag) cell.swapItemsAt(0, 1);
    cells.push_back(cell);
  }
  if (cells.empty()) {
    flow.paragraph(heading(language, "pick_up_list.none"));
  } else {
    flow.table(columns, cells);
  }
  return flow.take();
}

weavelog::Outcome<std::vector<PaperPage>> statement(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size) {
  const auto record = weavelog::load_player(ledger, request.player);
  if (!record) return weavelog::fail(record.error());
  const Language language = languageOnPaper(record->person.now.language, request.language);
  const auto lines = weavelog::money_of_player(ledger, request.event, request.player);
  QStringList below = belowTitle(ledger, request, language);
  below.prepend(words(weavelog::listed_name(record->person.now)));
  ListFlow flow(size, heading(language, "paper.statement"), below, pageNumbers(language));
  if (lines.empty()) flow.paragraph(heading(language, "statement.none"));
  for (const auto& account : weavelog::accounts_of(lines)) {
    std::vector<QStringList> cells;
    for (const auto& line : lines) {
      if (line.currency != account.currency) continue;
      QString what = line.payment ? paperSay(language, "statement.paid_by", {{"means", std::string(weavelog::name_of_choice(line.means))}})
                                  : serviceWords(language, line.service, {});
      if (!line.note.empty()) what = apart(what) + QStringLiteral(": ") + apart(words(line.note));
      QStringList about;
      if (line.reverses) about.append(heading(language, "statement.reversal"));
      if (line.job) {
        if (const auto job = weavelog::find_job(ledger, request.player, line.job); job && job->tag_number)
          about.append(paperSay(language, "statement.tag", {{"number", std::to_string(*job->tag_number)}}));
      }
      // What was paid stands with the opposite sign: the column adds up to what is due.
      const std::int64_t amount = line.payment ? -line.amount : line.amount;
      cells.push_back({timeOnPaper(language, line.at, request.zone), joinedOnPaper(QStringList{what} + about),
                       words(weavelog::money_words(language, amount, line.currency))});
    }
    flow.table({{heading(language, "column.time"), 26},
                {heading(language, "column.what"), 70},
                {heading(language, "column.amount"), 28, false, Qt::AlignRight}},
               cells);
    const auto money = [&](std::int64_t minor) { return words(weavelog::money_words(language, minor, account.currency)); };
    flow.table({{{}, 70}, {{}, 40, true, Qt::AlignRight}},
               {{heading(language, "statement.charged"), money(account.charged)}, {heading(language, "statement.paid"), money(account.paid)}});
    const char* balance = account.due() > 0 ? "statement.due" : account.due() < 0 ? "statement.owed_back" : "statement.settled";
    flow.paragraph(paperSay(language, balance, {{"amount", money(std::abs(account.due())).toStdString()}}), true);
  }
  return flow.take();
}
