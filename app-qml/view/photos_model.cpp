#include "app-qml/view/photos_model.h"

#include <QFile>
#include <QFileInfo>
#include <QQmlEngine>

#include <algorithm>
#include <set>

#include "app-qml/view/app_device.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/photo_image.h"
#include "app-qml/view/provided.h"
#include "core/desk/photo.h"
#include "sync/net/exchange_guest.h"

namespace {

using weavelog::Digest;
using weavelog::FaultCode;

// What a camera may write; it is made smaller before it is kept.
constexpr qint64 kMostBytes = 40LL << 20;

std::optional<Digest> digestFrom(const QString& hex) {
  Digest out{};
  if (!weavelog::from_hex(hex.toStdString(), out)) return std::nullopt;
  return out;
}

}  // namespace

PhotosModel::PhotosModel(AppDevice& device, QObject* parent) : QObject(parent) { follow(device); }

void PhotosModel::componentComplete() {
  if (auto* device = provided<AppDevice>(qmlEngine(this)); device != nullptr && device->isOpen()) follow(*device);
}

void PhotosModel::follow(AppDevice& device) {
  device_ = &device;
  connect(&device.work(), &Work::changed, this, &PhotosModel::refresh);
  connect(&device, &AppDevice::connectionChanged, this, &PhotosModel::refresh);
  refresh();
}

QString PhotosModel::book() const { return idText(book_); }
QString PhotosModel::job() const { return idText(job_); }

void PhotosModel::setBook(const QString& book) {
  const auto wanted = idFrom<weavelog::BookId>(book);
  if (wanted == book_) return;
  book_ = wanted;
  emit placeChanged();
  refresh();
}

void PhotosModel::setJob(const QString& job) {
  const auto wanted = idFrom<weavelog::EntityId>(job);
  if (wanted == job_) return;
  job_ = wanted;
  emit placeChanged();
  refresh();
}

void PhotosModel::refresh() {
  if (device_ == nullptr) return;
  QVariantList now;
  const auto record = book_ && job_ ? weavelog::load_player(device_->ledger(), book_) : weavelog::fail(FaultCode::not_found, "");
  const auto* job = record ? record->job(job_) : nullptr;
  if (job != nullptr) {
    const auto connection = device_->connection();
    const auto& fetches = connection.session.fetches;
    std::set<Digest> shown;
    for (const auto* photo : weavelog::photos_of(*record, job->now.racket)) {
      const auto content = weavelog::content_of(photo->now);
      if (!content || !shown.insert(*content).second) continue;
      State state = Elsewhere;
      double progress = 0;
      QString fault;
      const auto fetch = std::find_if(fetches.begin(), fetches.end(), [&](const auto& one) { return one.book == book_ && one.hash == *content; });
      if (device_->station().contents().holds(book_, *content)) {
        state = Here;
      } else if (fetch != fetches.end() && fetch->state <= weavelog::FetchState::coming) {
        state = fetch->state == weavelog::FetchState::coming ? Coming : Waiting;
        if (fetch->size > 0) progress = static_cast<double>(fetch->held) / static_cast<double>(fetch->size);
      } else if (connection.wanted.contains({book_, *content})) {
        state = Waiting;
      } else if (fetch != fetches.end() && fetch->fault) {
        switch (fetch->fault->code) {
          case FaultCode::not_found: fault = tr("No device that is connected has this picture."); break;
          case FaultCode::newer: fault = tr("The event server runs an earlier version, which hands on no pictures."); break;
          case FaultCode::refused: fault = tr("The event server may not hand this picture on."); break;
          case FaultCode::no_space: fault = tr("There is no space left for pictures on this tablet."); break;
          default: fault = tr("It did not come. Try again."); break;
        }
      }
      const QString by = qtext(photo->now.by), at = device_->work().timeText(photo->now.at);
      QStringList detail;
      for (const QString& part : {by, at})
        if (!part.isEmpty()) detail.append(part);
      now.append(QVariantMap{{QStringLiteral("content"), qtext(weavelog::to_hex(*content))},
                             {QStringLiteral("detail"), detail.join(QStringLiteral(", "))},
                             {QStringLiteral("note"), qtext(photo->now.note)},
                             {QStringLiteral("state"), state},
                             {QStringLiteral("progress"), progress},
                             {QStringLiteral("fault"), fault}});
    }
  }
  if (now == photos_) return;
  photos_ = now;
  emit changed();
}

bool PhotosModel::add(const QUrl& file, const QString& say) {
  if (device_ == nullptr) return false;
  Work& work = device_->work();
  const auto refuse = [&](const weavelog::Fault& fault) {
    work.tell(fault);
    return false;
  };
  const QString path = file.toLocalFile();
  QFile source(path);
  if (!QFileInfo(path).isFile() || !source.open(QIODevice::ReadOnly))
    return refuse({FaultCode::io, tr("The file can't be read.").toStdString(), path.toStdString(), tr("Choose another one.").toStdString()});
  const QByteArray raw = source.read(kMostBytes + 1);
  if (raw.size() > kMostBytes)
    return refuse({FaultCode::bad_input, tr("The file is larger than 40 MiB.").toStdString(), path.toStdString(), tr("Choose a smaller one.").toStdString()});
  return keep(cleanPhoto({reinterpret_cast<const std::uint8_t*>(raw.data()), static_cast<std::size_t>(raw.size())}), say);
}

bool PhotosModel::addPicture(const QImage& picture, const QString& say) { return device_ != nullptr && keep(keptPhoto(picture), say); }

bool PhotosModel::keep(const weavelog::Outcome<weavelog::Bytes>& clean, const QString& say) {
  Work& work = device_->work();
  const auto refuse = [&](const weavelog::Fault& fault) {
    work.tell(fault);
    return false;
  };
  if (!clean) return refuse(clean.error());
  const auto record = weavelog::load_player(device_->ledger(), book_);
  if (!record) return refuse(record.error());
  weavelog::PhotoTaken taken;
  taken.content = weavelog::digest_of(*clean);
  taken.media_type = "image/jpeg";
  taken.size = clean->size();
  taken.by = work.who().toStdString();
  taken.at = work.now();
  const auto draft = weavelog::put_photo(*record, job_, taken);
  if (!draft) return refuse(draft.error());
  // The bytes first: what the book names is on the disk.
  if (const auto kept = device_->station().contents().add(book_, *clean); !kept) return refuse(kept.error());
  return work.commit(draft, say);
}

void PhotosModel::fetch(const QString& content) {
  const auto hash = digestFrom(content);
  if (device_ == nullptr || !hash) return;
  if (device_->guest() == nullptr) {
    device_->work().tell({FaultCode::not_found, tr("This tablet is not connected to an event server.").toStdString(), {},
                          tr("Connect it under Exchange, then fetch the picture.").toStdString()});
    return;
  }
  device_->guest()->fetch_content(book_, *hash);
  refresh();
}

weavelog::Outcome<QImage> PhotosModel::image(const QString& content, QSize box) const {
  const auto hash = digestFrom(content);
  if (device_ == nullptr || !hash) return weavelog::fail(FaultCode::not_found, "no picture");
  const auto bytes = device_->station().contents().read(book_, *hash);
  if (!bytes) return weavelog::fail(bytes.error());
  return decodedPhoto(*bytes, box);
}
