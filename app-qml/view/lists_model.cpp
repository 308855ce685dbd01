#include "app-qml/view/lists_model.h"

#include <QQmlEngine>

#include <algorithm>
#include <tuple>

#include "app-qml/view/app_device.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"

namespace {

bool off(const weavelog::WorkStep& step) {
  return step.step.off.value_or(false);
}

}  // namespace

ListsModel::ListsModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  connect(&work_, &Work::changed, this, &ListsModel::refresh);
  refresh();
}

ListsModel* ListsModel::create(QQmlEngine* engine, QJSEngine*) {
  return new ListsModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

std::vector<weavelog::Loaded<weavelog::ListStep>> ListsModel::held() const {
  return work_.event() ? weavelog::list_steps(work_.ledger(), work_.event()) : std::vector<weavelog::Loaded<weavelog::ListStep>>{};
}

void ListsModel::setList(int list) {
  const auto wanted = list == 2 ? weavelog::WorkList::check : weavelog::WorkList::bench;
  if (wanted == list_) return;
  list_ = wanted;
  refresh();
  emit changed();
}

void ListsModel::refresh() {
  const auto before = std::tuple(steps_, removed_, usual_);
  const auto now = held();
  all_ = weavelog::work_list(now, list_, true);
  usual_ = !weavelog::usual_list(work_.event(), now, list_);
  steps_.clear();
  removed_.clear();
  for (const auto& step : all_)
    (off(step) ? removed_ : steps_)
        .append(QVariantMap{{QStringLiteral("name"), qtext(step.name)},
                            {QStringLiteral("text"), qtext(weavelog::step_words(work_.language(), step.step))},
                            {QStringLiteral("own"), step.own}});
  if (before != std::tuple(steps_, removed_, usual_)) emit changed();
}

bool ListsModel::change(const QString& name, const weavelog::StepChange& change, const QString& say) {
  return work_.commit(weavelog::change_step(work_.event(), held(), list_, name.toStdString(), change), say);
}

bool ListsModel::add(const QString& text, const QString& say) {
  return work_.commit(weavelog::add_step(work_.event(), held(), list_, text.trimmed().toStdString(), {}, work_.now()), say);
}

bool ListsModel::reword(const QString& name, const QString& text, const QString& say) {
  const std::string key = name.toStdString();
  const auto step = std::find_if(all_.begin(), all_.end(), [&](const auto& one) { return one.name == key; });
  weavelog::StepChange wanted{.text = text.trimmed().toStdString()};
  if (step != all_.end()) {
    const auto& held = step->step;
    const auto said = std::array{std::pair("en", &held.text_en), std::pair("de", &held.text_de), std::pair("fr", &held.text_fr),
                                 std::pair("es", &held.text_es)};
    for (const auto& [tag, words] : said)
      if (!words->empty() && work_.language().base() == tag) wanted.language = tag;
  }
  return change(name, wanted, say);
}

bool ListsModel::move(const QString& name, int by) {
  const std::string key = name.toStdString();
  const auto at = std::find_if(all_.begin(), all_.end(), [&](const auto& one) { return one.name == key; });
  if (at == all_.end() || by == 0) return false;
  // The place of the neighbour that is shown, past what is turned off.
  auto to = at;
  do {
    if (by < 0 ? to == all_.begin() : std::next(to) == all_.end()) return false;
    to += by < 0 ? -1 : 1;
  } while (off(*to));
  return change(name, {.place = static_cast<std::size_t>(to - all_.begin()) + 1}, {});
}

bool ListsModel::remove(const QString& name, const QString& say) {
  return change(name, {.off = true}, say);
}

bool ListsModel::putBack(const QString& name, const QString& say) {
  return change(name, {.off = false}, say);
}

bool ListsModel::backToUsual(const QString& say) {
  return work_.commit(weavelog::usual_list(work_.event(), held(), list_), say);
}

QString ListsModel::wrongWords(const QString& name, const QString& text) const {
  const QString wanted = text.trimmed();
  const bool practice = name.startsWith(u'=');
  if (wanted.isEmpty()) return practice ? QString() : tr("Say what is to be done.");
  const auto size = wanted.toUtf8().size();
  if (size > static_cast<qsizetype>(weavelog::kLongestStep))
    return tr("Too long to be read at the bench: leave out about %n letter(s).", nullptr, static_cast<int>(size - static_cast<qsizetype>(weavelog::kLongestStep)));
  if (wanted.startsWith(u'=')) return tr("Put a word before the equals sign.");
  for (const auto& step : all_) {
    const bool same = qtext(step.name) == wanted || qtext(weavelog::step_words(work_.language(), step.step)) == wanted;
    if (same && qtext(step.name) != name && !(name.isEmpty() && off(step) && step.own)) return tr("The list has a step of these words.");
  }
  return {};
}
