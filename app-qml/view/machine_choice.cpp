#include "app-qml/view/machine_choice.h"

#include <algorithm>

#include "app-qml/view/model_text.h"

MachineChoice::MachineChoice(Work& work, QObject* parent) : QObject(parent), work_(work) {}

const weavelog::MachineNow* MachineChoice::held() const {
  const auto found = std::find_if(machines_.begin(), machines_.end(), [&](const auto& one) { return one.machine.id() == chosen_; });
  return chosen_ && found != machines_.end() ? &*found : nullptr;
}

QVariantList MachineChoice::machines() const {
  QVariantList out;
  for (const auto& one : machines_) {
    const bool broken = one.out_of_order.has_value();
    out.append(QVariantMap{{QStringLiteral("id"), idText(one.machine.id())},
                           {QStringLiteral("name"), qtext(one.machine.now.name)},
                           {QStringLiteral("broken"), broken},
                           {QStringLiteral("detail"), broken ? tr("Out of order: %1").arg(qtext(one.out_of_order->note))
                                                      : one.cleaning_due ? tr("Its clamps are due for cleaning")
                                                                         : QString()}});
  }
  return out;
}

QString MachineChoice::chosen() const {
  return idText(chosen_);
}

QString MachineChoice::name() const {
  const auto* one = held();
  return one != nullptr ? qtext(one->machine.now.name) : knownName_;
}

void MachineChoice::lookAtNothing() {
  book_ = {};
  job_ = chosen_ = picked_ = {};
  machines_.clear();
  doubts_.clear();
  knownName_.clear();
  mounted_ = false;
  emit changed();
}

void MachineChoice::look(const weavelog::PlayerRecord& record, const weavelog::EntityId& id, bool canMount) {
  const auto* job = record.job(id);
  const auto stage = record.stage_of(id);
  mounted_ = stage.stage == weavelog::Stage::on_machine && !stage.clash;
  if (job == nullptr || !(mounted_ || canMount)) return lookAtNothing();
  if (id != job_) picked_ = {};
  book_ = record.book;
  job_ = id;
  agreed_ = job->now;
  machines_ = weavelog::event_machines(work_.ledger(), job->now.event, work_.zone(), work_.now());
  knownName_.clear();
  if (mounted_) {
    const auto said = weavelog::machine_of(record, id);
    chosen_ = said.machine;
    knownName_ = qtext(said.name);
    picked_ = {};
  } else {
    // One that broke down since it was chosen is not.
    const bool usable = std::any_of(machines_.begin(), machines_.end(),
                                    [&](const auto& one) { return one.machine.id() == picked_ && !one.out_of_order; });
    chosen_ = usable ? picked_
                     : weavelog::usual_machine(work_.ledger(), job->now.event, machines_, work_.who().toStdString());
  }
  doubts_.clear();
  if (const auto* one = held())
    for (const auto& doubt : weavelog::machine_doubts(work_.language(), one->machine.now, agreed_)) {
      QString text = qtext(doubt);
      text[0] = text[0].toUpper();
      doubts_.append(text);
    }
  emit changed();
}

void MachineChoice::fill(weavelog::StageStep& step) const {
  const auto* one = held();
  if (step.to != weavelog::Stage::on_machine || one == nullptr) return;
  step.machine = one->machine.id();
  step.machine_name = one->machine.now.name;
}

bool MachineChoice::choose(const QString& machine, const QString& say) {
  const auto id = idFrom<weavelog::EntityId>(machine);
  const auto found = std::find_if(machines_.begin(), machines_.end(), [&](const auto& one) { return one.machine.id() == id; });
  if (found == machines_.end()) return false;
  if (const auto inOrder = weavelog::require_in_order(*found); !inOrder) {
    work_.tell(inOrder.error());
    return false;
  }
  if (id == chosen_) return true;
  const auto record = weavelog::load_player(work_.ledger(), book_);
  if (!record) return work_.commit(weavelog::fail(record.error()), {});
  if (mounted_)
    return work_.commit(weavelog::change_machine_of(*record, job_, {id, found->machine.now.name}, {work_.who().toStdString(), work_.now()}), say);
  picked_ = id;
  look(*record, job_, true);
  return true;
}
