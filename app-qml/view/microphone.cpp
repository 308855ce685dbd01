#include "app-qml/view/microphone.h"

#include <QAudioDevice>
#include <QAudioSource>
#include <QDir>
#include <QFileInfo>
#include <QIODevice>
#include <QMediaDevices>

#include <algorithm>
#include <cstring>

namespace {

constexpr int usualRate = 44'100;

// Whether it makes sense to ask the multimedia library: where there is neither a sound server nor a device that records, it only complains.
bool couldHear() {
#ifdef Q_OS_LINUX
  const QString socket = qEnvironmentVariable("XDG_RUNTIME_DIR") + QStringLiteral("/pulse/native");
  return qEnvironmentVariableIsSet("PULSE_SERVER") || QFileInfo::exists(socket) ||
         !QDir(QStringLiteral("/dev/snd")).entryList({QStringLiteral("pcm*c")}, QDir::System).isEmpty();
#else
  return true;
#endif
}

// One channel of 16 bits where the device has that, otherwise as it likes it best.
QAudioFormat formatFor(const QAudioDevice& device) {
  QAudioFormat format;
  format.setSampleRate(usualRate);
  format.setChannelCount(1);
  format.setSampleFormat(QAudioFormat::Int16);
  return device.isFormatSupported(format) ? format : device.preferredFormat();
}

}  // namespace

std::vector<float> firstChannel(const QByteArray& bytes, const QAudioFormat& format) {
  std::vector<float> out;
  const qsizetype frame = format.bytesPerFrame();
  if (frame <= 0) return out;
  out.reserve(static_cast<std::size_t>(bytes.size() / frame));
  for (qsizetype at = 0; at + frame <= bytes.size(); at += frame) {
    const char* from = bytes.constData() + at;
    switch (format.sampleFormat()) {
      case QAudioFormat::UInt8:
        out.push_back((static_cast<float>(static_cast<unsigned char>(*from)) - 128) / 128);
        break;
      case QAudioFormat::Int16: {
        qint16 one = 0;
        std::memcpy(&one, from, sizeof one);
        out.push_back(static_cast<float>(one) / 32'768);
        break;
      }
      case QAudioFormat::Int32: {
        qint32 one = 0;
        std::memcpy(&one, from, sizeof one);
        out.push_back(static_cast<float>(one / 2'147'483'648.0));
        break;
      }
      case QAudioFormat::Float: {
        float one = 0;
        std::memcpy(&one, from, sizeof one);
        out.push_back(one);
        break;
      }
      default:
        return {};
    }
  }
  return out;
}

Microphone::Microphone() = default;
Microphone::~Microphone() = default;

SoundRecorder::Start Microphone::start() {
  stop();
  if (!couldHear()) return Start::noDevice;
  const QAudioDevice device = QMediaDevices::defaultAudioInput();
  if (device.isNull()) return Start::noDevice;
  const QAudioFormat format = formatFor(device);
  if (!format.isValid()) return Start::refused;
  source_ = std::make_unique<QAudioSource>(device, format);
  stream_ = source_->start();
  if (stream_ == nullptr || source_->error() != QAudio::NoError) {
    stop();
    return Start::refused;
  }
  connect(stream_, &QIODevice::readyRead, this, &Microphone::read);
  connect(source_.get(), &QAudioSource::stateChanged, this, [this](QAudio::State state) {
    if (source_ && state == QAudio::StoppedState && source_->error() != QAudio::NoError) emit broke();
  });
  return Start::listening;
}

void Microphone::stop() {
  stream_ = nullptr;
  rest_.clear();
  if (!source_) return;
  // It may be one of its own signals that made us stop: gone only when that has returned.
  source_->disconnect(this);
  source_->stop();
  source_.release()->deleteLater();
}

void Microphone::read() {
  if (stream_ == nullptr) return;
  const QAudioFormat format = source_->format();
  QByteArray bytes = rest_ + stream_->readAll();
  const qsizetype whole = format.bytesPerFrame() > 0 ? bytes.size() - bytes.size() % format.bytesPerFrame() : 0;
  rest_ = bytes.mid(whole);
  bytes.truncate(whole);
  const auto samples = firstChannel(bytes, format);
  if (!samples.empty()) emit heard(samples, format.sampleRate());
}
