#include "sync/trust/role.h"

namespace weavelog {

const char* name_of(Role role) {
  switch (role) {
    case Role::head:
      return "head";
    case Role::desk:
      return "desk";
    case Role::stringer:
      return "stringer";
    case Role::reader:
      return "reader";
  }
  return "unknown";
}

Outcome<Role> parse_role(std::string_view name) {
  for (const Role role : {Role::head, Role::desk, Role::stringer, Role::reader}) {
    if (name == name_of(role)) return role;
  }
  return fail(FaultCode::bad_input, "there is no role \"" + std::string(name.substr(0, 40)) + "\"", "role",
              "use head, desk, stringer or reader");
}

Outcome<Role> role_from(std::uint64_t number) {
  if (number < 1 || number > 4) {
    return fail(FaultCode::malformed, "role " + std::to_string(number) + " does not exist", "role",
                "update Weavelog");
  }
  return static_cast<Role>(number);
}

}  // namespace weavelog
