#include "app-qml/view/tone_model.h"

#include <QFile>
#include <QFileInfo>
#include <QQmlEngine>

#include <algorithm>
#include <cmath>

#include "app-qml/view/app_device.h"
#include "app-qml/view/microphone.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/base/localised.h"
#include "core/bed/bed_words.h"
#include "core/bed/estimate.h"
#include "core/bed/wav.h"

namespace {

constexpr double seconds = 6;
constexpr int silenceMs = 3000;
constexpr qint64 mostSoundBytes = 64 * 1024 * 1024;     // more than a minute of any usual recording; a longer file is heard as far
constexpr float top = 0.985F, floorLevel = 1e-3F;  // of full scale: runs at the top are clipped, below the floor is silence
constexpr std::size_t topRun = 3;

// Only what samples lie at the top one after the other is clipped: a loud tap may touch it.
bool touchesTop(const std::vector<float>& samples) {
  std::size_t run = 0;
  for (const float one : samples) {
    run = std::abs(one) >= top ? run + 1 : 0;
    if (run >= topRun) return true;
  }
  return false;
}

}  // namespace

ToneModel::ToneModel(Work& work, std::unique_ptr<SoundRecorder> recorder, QObject* parent)
    : QObject(parent), work_(work), recorder_(std::move(recorder)) {
  connect(recorder_.get(), &SoundRecorder::heard, this, &ToneModel::take);
  connect(recorder_.get(), &SoundRecorder::broke, this,
          [this] { broken(tr("The microphone was taken away, or another program holds it. Choose a recording instead (WAV).")); });
  silence_.setSingleShot(true);
  silence_.setInterval(silenceMs);
  connect(&silence_, &QTimer::timeout, this,
          [this] { broken(tr("The microphone delivers nothing. Look whether it is on, or choose a recording instead (WAV).")); });
}

ToneModel* ToneModel::create(QQmlEngine* engine, QJSEngine*) {
  return new ToneModel(provided<AppDevice>(engine)->work(), std::make_unique<Microphone>());  // the engine takes it over
}

int ToneModel::secondsLeft() const {
  return state_ != Listening ? 0
         : rate_ > 0         ? static_cast<int>(std::ceil(seconds - static_cast<double>(samples_.size()) / rate_))
                             : static_cast<int>(seconds);
}

void ToneModel::forget() {
  silence_.stop();
  if (state_ == Listening) recorder_->stop();
  ++asked_;
  state_ = Idle;
  samples_ = {};
  rate_ = doubt_ = loudness_ = 0;
  level_ = Silent;
  deaf_ = false;
  hertz_.clear();
  title_.clear();
  text_.clear();
  emit levelChanged();
  emit changed();
}

void ToneModel::listen(double expected) {
  forget();
  expected_ = expected;
  switch (recorder_->start()) {
    case SoundRecorder::Start::listening:
      state_ = Listening;
      silence_.start();
      break;
    case SoundRecorder::Start::noDevice:
      return broken(tr("This device has no microphone. Choose a recording instead (WAV)."));
    case SoundRecorder::Start::refused:
      return broken(tr("The microphone can’t be used: another program may hold it. Choose a recording instead (WAV)."));
  }
  emit levelChanged();
  emit changed();
}

void ToneModel::take(const std::vector<float>& samples, double rate) {
  if (state_ != Listening || samples.empty() || !(rate > 0)) return;
  silence_.stop();
  // A device that changes its rate in between begins anew.
  if (rate != rate_) samples_.clear();
  rate_ = rate;
  samples_.insert(samples_.end(), samples.begin(), samples.end());
  float loudest = 0;
  for (const float one : samples) loudest = std::max(loudest, std::abs(one));
  loudness_ = std::clamp(1 + 20 * std::log10(std::max(1e-6, static_cast<double>(loudest))) / 60, 0.0, 1.0);
  if (touchesTop(samples))
    level_ = Clipped;
  else if (level_ == Silent && loudest > floorLevel)
    level_ = Fine;
  emit levelChanged();
  if (static_cast<double>(samples_.size()) >= seconds * rate_)
    enough();
  else
    silence_.start();
}

void ToneModel::enough() {
  if (state_ != Listening) return;
  silence_.stop();
  recorder_->stop();
  find(std::exchange(samples_, {}), rate_);
}

void ToneModel::broken(const QString& why) {
  forget();
  deaf_ = true;
  unknown(tr("It can’t listen"), why);
}

void ToneModel::unknown(const QString& title, const QString& text) {
  state_ = Unknown;
  title_ = title;
  text_ = text;
  emit changed();
}

void ToneModel::find(std::vector<float> samples, double rate) {
  state_ = Finding;
  beside_.work(
      [samples = std::move(samples), rate, expected = expected_] {
        weavelog::ListenOptions options;
        if (expected > 0) options.expected = expected;
        return weavelog::listen(samples, rate, options);
      },
      [this, asked = ++asked_](const auto& heard) {
        if (asked == asked_) say(heard);
      });
  emit changed();
}

void ToneModel::hearFile(const QUrl& file, double expected) {
  forget();
  state_ = Finding;
  const auto path = file.isLocalFile() ? file.toLocalFile() : file.toString();
  beside_.work(
      [path, expected]() -> weavelog::Outcome<weavelog::HeardTone> {
        QFile in(path);
        if (!QFileInfo(path).isFile() || !in.open(QIODevice::ReadOnly))
          return weavelog::fail(weavelog::FaultCode::io, "the recording can't be read", path.toStdString(), "choose a WAV file that you may read");
        const QByteArray bytes = in.read(mostSoundBytes);
        const auto recording = weavelog::read_wav(weavelog::as_bytes(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size()))),
                                                  QFileInfo(path).fileName().toStdString());
        if (!recording) return weavelog::fail(recording.error());
        weavelog::ListenOptions options;
        if (expected > 0) options.expected = expected;
        return weavelog::listen(recording->samples, recording->rate, options);
      },
      [this, asked = ++asked_](const auto& heard) {
        if (asked == asked_) say(heard);
      });
  emit changed();
}

void ToneModel::say(const weavelog::Outcome<weavelog::HeardTone>& heard) {
  const auto& language = work_.language();
  const QString nothing = tr("The tone is not known");
  if (!heard) {
    const std::string& what = heard.error().what;
    if (what.starts_with("silent")) return unknown(nothing, tr("Nothing was heard. Look whether the microphone is on, and tap the bed close to it."));
    if (what.starts_with("clipped"))
      return unknown(nothing, tr("It was too loud for the microphone. Tap more softly, or hold the racket further off."));
    if (what.starts_with("too short")) return unknown(nothing, tr("That was too short. Let it listen until you have tapped three times."));
    return unknown(nothing, qtext(heard.error().message()));
  }
  if (!heard->hz) return unknown(nothing, qtext(weavelog::advice_words(language, heard->doubt)));
  const auto number = [&](double value, std::uint8_t places) {
    return qtext(weavelog::localised(language, weavelog::Decimal::rounded(value, places)));
  };
  const auto band = weavelog::BedEstimate::of(*heard->hz, heard->relative_sd);
  hertz_ = qtext(weavelog::Decimal::rounded(*heard->hz, 1).text());
  doubt_ = heard->relative_sd;
  state_ = Known;
  title_ = tr("Tone: %1 Hz").arg(number(*heard->hz, 1));
  text_ = tr("Estimate of %n tap(s), nine times of ten %1 to %2 Hz; %3 % sure that it is the bed’s own tone to half a per cent.", nullptr,
             static_cast<int>(
                 std::count_if(heard->taps.begin(), heard->taps.end(), [](const auto& tap) { return tap.doubt == weavelog::ToneDoubt::none; })))
              .arg(number(band.low, 1), number(band.high, 1), number(std::floor(100 * heard->confidence), 0));
  emit changed();
  emit found();
}
