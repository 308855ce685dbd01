#include "app-qml/view/desk_model.h"

#include "app-qml/view/drop_off_storing.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "app-qml/view/settings.h"
#include "core/model/event.h"

namespace {

// What an entry list knows of a player, as the beginning of a book.
weavelog::Person personOf(const weavelog::EntryListItem& entry) {
  weavelog::Person person;
  person.family_name = entry.family_name;
  person.given_name = entry.given_name;
  person.native_name = entry.native_name;
  person.country = entry.country;
  person.birth_year = entry.birth_year;
  person.hand = entry.hand;
  person.tour_number = entry.tour_number;
  return person;
}

}  // namespace

DeskModel::DeskModel(Work& work, Settings& settings, QObject* parent)
    : QObject(parent), work_(work), settings_(settings), finder_(work, true), card_(work), draft_(work), alike_(work) {
  connect(&draft_, &DropOffDraft::edited, this, [this] { alike_.lookFor(draft_.id(), draft_.newcomer()); });
}

DeskModel* DeskModel::create(QQmlEngine* engine, QJSEngine*) {
  return provided<DeskModel>(engine);
}

void DeskModel::turnTo(Page page) {
  if (page == page_) return;
  page_ = page;
  emit pageChanged();
}

void DeskModel::choose(int row) {
  const auto index = finder_.index(row, 0);
  const QString book = finder_.data(index, PlayersModel::BookRole).toString();
  if (!book.isEmpty()) return showPlayer(book);
  const auto entry = idFrom<weavelog::EntityId>(finder_.data(index, PlayersModel::EntryRole).toString());
  const auto held = entry ? work_.ledger().entity(work_.event(), entry) : std::nullopt;
  if (!held) return;
  draft_.beginNew(personOf(weavelog::from_state<weavelog::EntryListItem>(*held)), entry,
                  settings_.tensionUnit());
  turnTo(Page::DropOff);
}

void DeskModel::showPlayer(const QString& book) {
  // Of the books of one person the one that was written in last goes on; the card tells what stands in the others.
  const auto person = weavelog::load_person(work_.ledger(), idFrom<weavelog::BookId>(book));
  card_.show(person ? idText(weavelog::newest_book(*person)) : book);
  if (!card_.book().isEmpty()) turnTo(Page::Player);
}

void DeskModel::addPlayer() {
  weavelog::Person person;
  person.family_name = finder_.typed().simplified().toStdString();
  draft_.beginNew(person, {}, settings_.tensionUnit());
  turnTo(Page::DropOff);
}

void DeskModel::takeKnown(const QString& book) {
  const auto person = weavelog::load_person(work_.ledger(), idFrom<weavelog::BookId>(book));
  if (!person || !draft_.fresh()) return;
  const auto newest = weavelog::newest_book(*person);
  // One that was chosen from the entry list is that player, said once for the whole room.
  if (draft_.entry() && !linkEntry(work_, draft_.entry(), newest)) return;
  card_.show(idText(newest));
  if (!draft_.saysNothing()) return draft_.turnInto(newest);
  draft_.discard(draft_.id());
  turnTo(Page::Player);
}

void DeskModel::sameAsLastTime() {
  if (draft_.begin(idFrom<weavelog::BookId>(card_.book()), false)) turnTo(Page::DropOff);
}

void DeskModel::askEverything() {
  if (draft_.begin(idFrom<weavelog::BookId>(card_.book()), true)) turnTo(Page::DropOff);
}

void DeskModel::resume(const QString& draft) {
  if (!draft_.resume(draft)) return;
  card_.show(draft_.fresh() ? QString() : idText(draft_.book()));
  turnTo(Page::DropOff);
}

void DeskModel::readBack() {
  if (readyToRead()) turnTo(Page::Confirm);
}

bool DeskModel::readyToRead() {
  if (draft_.prepareReadBack()) return true;
  emit heldBack(draft_.troublePart());
  draft_.pointAtTrouble();
  return false;
}

void DeskModel::confirm(const QString& shown) {
  if (shown.isEmpty() || page_ != Page::Confirm) return;
  const QString book = idText(draft_.book());
  if (!draft_.store(shown)) return turnTo(Page::DropOff);
  card_.show(book);
  turnTo(Page::Stored);
}

void DeskModel::storeUnconfirmed() {
  const QString book = idText(draft_.book());
  if (!readyToRead() || !draft_.store({})) return;
  card_.show(book);
  turnTo(Page::Stored);
}

void DeskModel::back() {
  switch (page_) {
    case Page::Confirm:
      return turnTo(Page::DropOff);
    case Page::DropOff: {
      const bool known = !draft_.fresh() && !card_.book().isEmpty();
      draft_.leave();
      return turnTo(known ? Page::Player : Page::Find);
    }
    default:
      return next();
  }
}

void DeskModel::next() {
  draft_.leave();
  card_.show({});
  finder_.setTyped({});
  turnTo(Page::Find);
}

void DeskModel::open(const QString& what) {
  const QString page = what.section(u':', 0, 0);
  finder_.setTyped(what.section(u':', 1));
  if (page == QLatin1String("new")) return addPlayer();
  if (finder_.count() == 0) return;
  choose(0);
  if (page == QLatin1String("drop-off") || page == QLatin1String("confirm")) sameAsLastTime();
  if (page == QLatin1String("first")) askEverything();
  if (page == QLatin1String("consent")) askEverything();
  if (page == QLatin1String("confirm") || page == QLatin1String("consent")) readBack();
}
