#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QUrl>
#include <QVariant>

#include <map>
#include <memory>
#include <vector>

#include "app-qml/view/beside_screen.h"
#include "app-qml/view/work.h"
#include "core/desk/bring_past_jobs.h"

class QQmlEngine;
class QJSEngine;

// What a room strung before, out of a table that somebody kept by hand: its columns are looked at, doubts are asked about, what would become of it is
// told, and only then it is brought in; each import can be taken back whole. Reading, comparing and writing are done beside the screen.
class PastJobsModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // A file is being read, compared, brought in or taken back.
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  // Name of the file; "" while none is chosen.
  Q_PROPERTY(QString file READ file NOTIFY changed)
  // Why it can't be read as it is, in the program's words, and what kind of trouble it is.
  Q_PROPERTY(Trouble trouble READ trouble NOTIFY changed)
  Q_PROPERTY(QString troubleText READ troubleText NOTIFY changed)
  // How its bytes are read; asked for where it is no UTF-8.
  Q_PROPERTY(int encoding READ encoding WRITE setEncoding NOTIFY changed)
  // Of the file, in its order: [{header, first (its first values), ours, unit}].
  Q_PROPERTY(QVariantList columns READ columns NOTIFY changed)
  // What a column can hold: [{value, text}], "" for nothing.
  Q_PROPERTY(QVariantList meanings READ meanings CONSTANT)
  // Symbol of the unit of tensions that say none; "" where all say theirs or it is open.
  Q_PROPERTY(QString unit READ unit WRITE setUnit NOTIFY changed)
  Q_PROPERTY(Doubt unitDoubt READ unitDoubt NOTIFY changed)
  // In which order dates with slashes are read: 1 day first, 2 month first, 0 where there are none.
  Q_PROPERTY(int dayOrder READ dayOrder WRITE setDayOrder NOTIFY changed)
  Q_PROPERTY(Doubt dayDoubt READ dayDoubt NOTIFY changed)
  // The first rows as they would come in: [{line, name, detail}], and what is wrong with others: [{line, text}]; how many there are of each.
  Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
  Q_PROPERTY(int goodRows READ goodRows NOTIFY changed)
  Q_PROPERTY(QVariantList faults READ faults NOTIFY changed)
  Q_PROPERTY(int badRows READ badRows NOTIFY changed)
  // What would become of it: jobs that are new and those that are here already, players by how they are known.
  Q_PROPERTY(int newJobs READ newJobs NOTIFY changed)
  Q_PROPERTY(int heldJobs READ heldJobs NOTIFY changed)
  Q_PROPERTY(int knownPlayers READ knownPlayers NOTIFY changed)
  Q_PROPERTY(int newPlayers READ newPlayers NOTIFY changed)
  // Who may be somebody known: [{index, name, looksLike, jobs, answer}], answer as Answer.
  Q_PROPERTY(QVariantList likely READ likely NOTIFY changed)
  // Nothing is left to be asked, and there is something to bring in.
  Q_PROPERTY(bool ready READ ready NOTIFY changed)
  // While it is brought in: actions stored, and how many there are; 0 of 0 otherwise.
  Q_PROPERTY(int stored READ stored NOTIFY progressed)
  Q_PROPERTY(int toStore READ toStore NOTIFY progressed)
  // What the last doing came to.
  Q_PROPERTY(Result result READ result NOTIFY changed)
  Q_PROPERTY(QString told READ told NOTIFY changed)
  // Newest first: [{index, name, when, players}].
  Q_PROPERTY(QVariantList imports READ imports NOTIFY changed)

 public:
  enum Trouble { None, NoFile, NoTable, NoNames, NoStrings, Other };
  Q_ENUM(Trouble)
  // Nothing to ask; found by the figures and to be looked at; to be answered first; answered by a person.
  enum Doubt { Clear, Found, Open, Said };
  Q_ENUM(Doubt)
  enum Answer { LeaveOut, Same, Another };
  Q_ENUM(Answer)
  enum Result { Nothing, BroughtIn, NotAllBroughtIn, TakenBack, PartlyTakenBack, NotTakenBack };
  Q_ENUM(Result)

  // `work` must outlive it.
  explicit PastJobsModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static PastJobsModel* create(QQmlEngine* engine, QJSEngine* script);

  Q_INVOKABLE void choose(const QUrl& file);
  Q_INVOKABLE void leave();
  // What a column holds; another that was taken for the same is for nothing then.
  Q_INVOKABLE void setMeaning(int column, const QString& ours);
  Q_INVOKABLE void answer(int index, int answer);
  Q_INVOKABLE void bringIn();
  // That import of the list, as one.
  Q_INVOKABLE void takeBack(int index);

  [[nodiscard]] bool busy() const { return beside_.busy(); }
  [[nodiscard]] QString file() const { return file_; }
  [[nodiscard]] Trouble trouble() const { return trouble_; }
  [[nodiscard]] QString troubleText() const { return troubleText_; }
  [[nodiscard]] int encoding() const { return static_cast<int>(options_.csv.encoding); }
  void setEncoding(int encoding);
  [[nodiscard]] QVariantList columns() const { return columns_; }
  [[nodiscard]] QVariantList meanings() const;
  [[nodiscard]] QString unit() const;
  void setUnit(const QString& unit);
  [[nodiscard]] Doubt unitDoubt() const;
  [[nodiscard]] int dayOrder() const { return static_cast<int>(look_ ? look_->jobs.day_order : weavelog::DayOrder::unsaid); }
  void setDayOrder(int order);
  [[nodiscard]] Doubt dayDoubt() const;
  [[nodiscard]] QVariantList rows() const { return rows_; }
  [[nodiscard]] int goodRows() const { return look_ ? static_cast<int>(look_->jobs.rows.size()) : 0; }
  [[nodiscard]] QVariantList faults() const { return faults_; }
  [[nodiscard]] int badRows() const { return look_ ? static_cast<int>(look_->jobs.faults.size()) : 0; }
  [[nodiscard]] int newJobs() const;
  [[nodiscard]] int heldJobs() const;
  [[nodiscard]] int knownPlayers() const;
  [[nodiscard]] int newPlayers() const;
  [[nodiscard]] QVariantList likely() const;
  [[nodiscard]] bool ready() const;
  [[nodiscard]] int stored() const { return stored_; }
  [[nodiscard]] int toStore() const { return toStore_; }
  [[nodiscard]] Result result() const { return result_; }
  [[nodiscard]] QString told() const { return told_; }
  [[nodiscard]] QVariantList imports() const { return imports_; }

 signals:
  void changed();
  void progressed();

 private:
  // What a file came to, as it was read and compared beside the screen.
  struct Look {
    std::optional<weavelog::Fault> fault;
    std::optional<weavelog::CsvFault> noTable;
    Trouble trouble = None;
    weavelog::CsvTable table;
    std::vector<weavelog::ColumnUse> uses;
    weavelog::PastJobs jobs;
    weavelog::PastPlan plan;
  };
  using Bytes = std::shared_ptr<const std::string>;

  [[nodiscard]] static Look looked(const weavelog::Ledger& ledger, const std::string& bytes, weavelog::PastJobsOptions options,
                                   const std::string& name);
  void look();
  void take(const Look& look);
  void readImports();
  void storeFrom(std::size_t next);
  [[nodiscard]] weavelog::PastPlan answered() const;
  void end(Result result, const QString& told);

  Work& work_;
  QString file_;
  Bytes bytes_;
  weavelog::PastJobsOptions options_;
  std::shared_ptr<const Look> look_;  // null while nothing was read, or can be
  Trouble trouble_ = None;
  QString troubleText_;
  QVariantList columns_, rows_, faults_, imports_;
  std::map<std::size_t, Answer> answers_;  // by place in the plan
  std::shared_ptr<const std::vector<weavelog::Draft>> drafts_;
  weavelog::PastImport import_;
  int stored_ = 0, toStore_ = 0;
  bool storing_ = false;  // piece by piece: nothing else may be asked of beside_ meanwhile
  int choice_ = 0;        // counts, so that what is worked out for a file that was left is told apart
  Result result_ = Nothing;
  QString told_;
  BesideScreen beside_{*this};  // ends before what it reports to
};
