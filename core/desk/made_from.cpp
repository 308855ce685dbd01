#include "core/desk/made_from.h"

#include <algorithm>

#include "core/base/digest.h"

namespace weavelog {

EntityId made_from(const EntityId& source, std::string_view use, std::string_view part) {
  const Digest digest = digest_of({as_bytes(use), source.view(), as_bytes(part)});
  EntityId id = source;
  std::copy_n(digest.begin(), 10, id.bytes.begin() + 6);
  return id;
}

}  // namespace weavelog
