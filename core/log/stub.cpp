#include "core/log/stub.h"

#include "core/log/archive.h"

namespace weavelog {

Bytes stub_message(const Stub& stub) {
  Bytes out;
  OutArchive ar(out);
  ar.raw(as_bytes("weavelog stub 1"));
  ar.raw(stub.book.bytes);
  ar.varint(static_cast<std::uint8_t>(stub.kind));
  ar.zigzag(stub.at);
  ar.raw(stub.key);
  ar.sized(as_bytes(stub.device));
  return out;
}

Stub sign_stub(const DeviceKey& key, std::string device, const BookId& book, BookKind kind, UnixMs at) {
  Stub stub{book, kind, at, key.public_key(), std::move(device), {}};
  stub.signature = key.sign(stub_message(stub));
  return stub;
}

bool proves_itself(const Stub& stub) {
  return verify(stub.key, stub_message(stub), stub.signature);
}

}  // namespace weavelog
