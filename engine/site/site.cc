#include "engine/site/site.h"

namespace proofstone {

Site::Site() = default;
Site::Site(const Site&) = default;
Site::Site(Site&&) noexcept = default;
Site& Site::operator=(const Site&) = default;
Site& Site::operator=(Site&&) noexcept = default;
Site::~Site() = default;

}  // namespace proofstone
