#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>

#include <string>
#include <vector>

#include "app-qml/view/work.h"
#include "core/model/queries.h"

// Players found as one types: those whose book is here, then those of today's entry list who are not known
// here yet. More are read as the list is scrolled.
class PlayersModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("Made by the app")
  Q_PROPERTY(QString typed READ typed WRITE setTyped NOTIFY typedChanged)
  // Rows read so far.
  Q_PROPERTY(int count READ count NOTIFY countChanged)
  // Players known on this device, whatever is typed.
  Q_PROPERTY(int known READ known NOTIFY countChanged)

 public:
  enum Role {
    BookRole = Qt::UserRole,  // hexadecimal; "" for one of the entry list
    EntryRole,                // hexadecimal; "" for a known player
    NameRole,                 // family name first
    OwnScriptRole,
    AboutRole,  // country, last event and day
    FreshRole,  // not known here yet
  };

  // `work` must outlive it.
  explicit PlayersModel(Work& work, bool withEntries, QObject* parent = nullptr);

  // These are not found: who looks for another one knows them already.
  void leaveOut(std::vector<weavelog::BookId> books);
  [[nodiscard]] QString typed() const { return typed_; }
  void setTyped(const QString& typed);
  [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }
  // Hexadecimal; "" while nobody is found.
  Q_INVOKABLE QString firstBook() const { return rows_.empty() ? QString() : QString::fromStdString(rows_.front().book.hex()); }
  [[nodiscard]] int known() const { return known_; }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
  [[nodiscard]] bool canFetchMore(const QModelIndex& parent) const override;
  void fetchMore(const QModelIndex& parent) override;

 signals:
  void typedChanged();
  void countChanged();

 private:
  static constexpr std::size_t page = 60;

  struct Row {
    weavelog::BookId book;
    weavelog::EntityId entry;
    QString name;
    QString native;
    QString detail;
    bool operator==(const Row&) const = default;
  };
  struct Entry {
    weavelog::EntryRow row;
    std::string words;  // folded, parted by spaces
  };

  void refresh();
  void readEntries();
  void search();
  [[nodiscard]] Row rowOf(const weavelog::PlayerRow& player) const;
  [[nodiscard]] std::vector<Row> freshRows() const;

  Work& work_;
  bool withEntries_;
  QString typed_;
  std::vector<weavelog::BookId> leftOut_;
  std::size_t limit_ = page;
  bool more_ = false;
  int known_ = 0;
  std::vector<Entry> entries_;
  std::vector<Row> rows_;
};
