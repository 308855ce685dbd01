#include "app-qml/view/machines_model.h"

#include <QLocale>
#include <QRegularExpression>
#include <QQmlEngine>

#include "app-qml/view/app_device.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"

namespace {

// "25", "25,5", "55 lb": kilograms where no unit is said.
weavelog::Outcome<weavelog::Quantity> tensionFrom(const QString& typed) {
  const auto text = typed.trimmed();
  const auto gap = text.indexOf(QRegularExpression(QStringLiteral("[^0-9.,]")));
  const auto amount = weavelog::Decimal::parse((gap < 0 ? text : text.left(gap)).trimmed().toStdString());
  if (!amount) return weavelog::fail(amount.error());
  if (gap < 0) return weavelog::Quantity{*amount, weavelog::Unit::kilogram_force};
  const auto unit = weavelog::unit_from(text.mid(gap).trimmed().toStdString());
  if (!unit) return weavelog::fail(weavelog::FaultCode::bad_input, "that is no unit of tension", "tension", "give kg, lb or N");
  return weavelog::Quantity{*amount, *unit};
}

}  // namespace

MachinesModel::MachinesModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  connect(&work_, &Work::changed, this, &MachinesModel::refresh);
  refresh();
}

MachinesModel* MachinesModel::create(QQmlEngine* engine, QJSEngine*) {
  return new MachinesModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

void MachinesModel::refresh() {
  QVariantList machines;
  needing_ = 0;
  if (work_.event())
    for (const auto& now : weavelog::event_machines(work_.ledger(), work_.event(), work_.zone(), work_.now())) {
      const auto& machine = now.machine.now;
      QVariantMap one{{"id", idText(now.machine.id())},
                      {"name", qtext(machine.name)},
                      {"kind", static_cast<int>(machine.kind)},
                      {"maker", QString(qtext(machine.maker) + u' ' + qtext(machine.model)).trimmed()},
                      {"most", saidText(work_.language(), machine.max_tension)},
                      {"prestretch", qtext(machine.prestretch)},
                      {"whose", qtext(machine.whose)},
                      {"strung", static_cast<int>(now.strung)},
                      {"due", now.cleaning_due},
                      {"cleaned", work_.timeText(now.cleaned_at)},
                      {"broken", now.out_of_order.has_value()},
                      {"reason", now.out_of_order ? qtext(now.out_of_order->note) : QString()},
                      {"by", now.out_of_order ? qtext(now.out_of_order->by) : QString()}};
      if (now.calibration) {
        one["asked"] = saidText(work_.language(), now.calibration->asked);
        one["read"] = saidText(work_.language(), now.calibration->read);
        one["calibrated"] = work_.timeText(now.calibration->at);
      }
      if (const auto off = now.off_per_mille())
        one["off"] = (*off > 0 ? QStringLiteral("+") : QString()) +
                     QLocale(qtext(work_.language().tag())).toString(static_cast<double>(*off) / 10, 'f', 1);
      needing_ += now.cleaning_due || now.out_of_order;
      machines.append(one);
    }
  if (machines == machines_) return;
  machines_ = machines;
  emit changed();
}

bool MachinesModel::add(const QVariantMap& machine, const QString& say) {
  const auto text = [&](const char* key) { return machine.value(QLatin1String(key)).toString().trimmed(); };
  weavelog::Machine wanted;
  wanted.name = text("name").toStdString();
  wanted.kind = static_cast<weavelog::MachineKind>(machine.value(QStringLiteral("kind")).toInt());
  wanted.maker = text("maker").toStdString();
  wanted.model = text("model").toStdString();
  wanted.whose = text("whose").toStdString();
  wanted.prestretch = text("prestretch").toStdString();
  if (const auto most = text("most"); !most.isEmpty()) {
    const auto tension = tensionFrom(most);
    if (!tension) return work_.commit(weavelog::fail(tension.error()), {});
    wanted.max_tension = *tension;
  }
  if (const auto every = text("every"); !every.isEmpty()) wanted.clean_every = every.toLongLong();
  return work_.commit(
      weavelog::add_machine(work_.event(), weavelog::load_machines(work_.ledger(), work_.event()), wanted, work_.now()), say);
}

bool MachinesModel::note(const QString& machine, weavelog::MachineCare care, const QString& say) {
  care.machine = idFrom<weavelog::EntityId>(machine);
  care.by = work_.who().isEmpty() ? work_.ledger().self().device : work_.who().toStdString();
  return work_.commit(weavelog::note_care(work_.event(), care, work_.now()), say);
}

bool MachinesModel::clean(const QString& machine, const QString& say) {
  weavelog::MachineCare care;
  care.what = weavelog::CareKind::clamps_cleaned;
  return note(machine, care, say);
}

bool MachinesModel::breakDown(const QString& machine, const QString& reason, const QString& say) {
  weavelog::MachineCare care;
  care.what = weavelog::CareKind::out_of_order;
  care.note = reason.trimmed().toStdString();
  return note(machine, care, say);
}

bool MachinesModel::mend(const QString& machine, const QString& say) {
  weavelog::MachineCare care;
  care.what = weavelog::CareKind::back_in_order;
  return note(machine, care, say);
}

bool MachinesModel::calibrate(const QString& machine, const QString& asked, const QString& read, const QString& say) {
  weavelog::MachineCare care;
  care.what = weavelog::CareKind::calibrated;
  const auto set = tensionFrom(asked), shown = tensionFrom(read);
  if (!set) return work_.commit(weavelog::fail(set.error()), {});
  if (!shown) return work_.commit(weavelog::fail(shown.error()), {});
  care.asked = *set;
  care.read = *shown;
  return note(machine, care, say);
}

QString MachinesModel::wrongTension(const QString& tension) const {
  if (tension.trimmed().isEmpty()) return {};
  const auto read = tensionFrom(tension);
  if (read && weavelog::in_newtons(*read).value_or(0) > 0) return {};
  return tr("Give a tension such as 25 or 55 lb.");
}
