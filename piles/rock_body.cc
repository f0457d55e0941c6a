#include "piles/rock_body.h"

#include <LinearMath/btConvexHullComputer.h>

#include <algorithm>
#include <cmath>

#include "piles/noise.h"

namespace proofstone::piles {
namespace {

Vec3 any_direction(Draws& draws) {
  const double height = 2 * draws.uniform() - 1;
  const double turn = 6.283185307179586 * draws.uniform();
  const double across = std::sqrt(1 - height * height);
  return {static_cast<float>(across * std::cos(turn)), static_cast<float>(across * std::sin(turn)),
          static_cast<float>(height)};
}

float between(Draws& draws, double low, double high) {
  return static_cast<float>(low + (high - low) * draws.uniform());
}

/// From the centre to the tangent plane of an ellipsoid with these axes.
float tangent_distance(const Vec3& axes, const Vec3& normal) {
  return (axes * normal).length() / 2;
}

/// How a form is broken out of the solid.
struct Breaking {
  double tilt = 0.15;  ///< of the six main faces, as a slope
  int cuts = 7;        ///< further faces, at corners and edges
  double cut_low = 0.82;
  double cut_high = 1.12;
};

std::vector<Facet> broken(const Vec3& axes, const Breaking& how, Draws& draws) {
  std::vector<Facet> facets;
  for (int face = 0; face < 6; ++face) {
    Vec3 normal(0, 0, 0);
    normal[face / 2] = face % 2 == 0 ? 1.0F : -1.0F;
    Vec3 lean = any_direction(draws) * static_cast<float>(how.tilt);
    lean = filtered(lean, axes) * (1 / axes[0]);
    lean[face / 2] = 0;
    normal = (normal + lean).normalized();
    facets.push_back({normal, axes[face / 2] / 2 * between(draws, 0.88, 1.06)});
  }
  for (int cut = 0; cut < how.cuts; ++cut) {
    const Vec3 normal = any_direction(draws);
    const float distance = tangent_distance(axes, normal);
    facets.push_back({normal, distance * between(draws, how.cut_low, how.cut_high)});
  }
  return facets;
}

Breaking breaking_of(RockShape shape, Draws& draws) {
  const int cuts = 5 + static_cast<int>(6 * draws.uniform());
  switch (shape) {
    case RockShape::blocky:
      return {0.2, cuts, 0.8, 1.12};
    case RockShape::wedge:
      return {0.5, cuts, 0.75, 1.1};
    case RockShape::slabby:
      return {0.1, cuts, 0.86, 1.12};
    case RockShape::notched:
      return {0.25, cuts - 2, 0.84, 1.12};
    case RockShape::rounded:
      return {0.2, 8, 0.92, 1.1};
    case RockShape::splinter:
      break;
  }
  return {};
}

/// The hull of 12 to 24 points strewn evenly in the ellipsoid with these axes.
std::vector<Facet> splintered(const Vec3& axes, Draws& draws) {
  const int count = 12 + static_cast<int>(13 * draws.uniform());
  std::vector<Vec3> points;
  Vec3 middle(0, 0, 0);
  for (int i = 0; i < count; ++i) {
    const Vec3 out = any_direction(draws);
    const float share = std::pow(static_cast<float>(draws.uniform()), 1.0F / 3.0F);
    points.push_back(filtered(out * share, axes) / 2);
    middle += points.back() / static_cast<float>(count);
  }
  btConvexHullComputer hull;
  hull.compute(points.front().m_floats, sizeof(Vec3), count, 0, 0);
  std::vector<Facet> facets;
  for (int face = 0; face < hull.faces.size(); ++face) {
    const btConvexHullComputer::Edge* edge = &hull.edges[hull.faces[face]];
    const Vec3& p = hull.vertices[edge->getSourceVertex()];
    const Vec3& q = hull.vertices[edge->getTargetVertex()];
    const Vec3& r = hull.vertices[edge->getNextEdgeOfFace()->getTargetVertex()];
    Vec3 normal = (q - p).cross(r - p);
    if (normal.fuzzyZero()) continue;
    normal.normalize();
    if (normal.dot(p - middle) < 0) normal = -normal;
    facets.push_back({normal, normal.dot(p - middle)});
  }
  return facets;
}

}  // namespace

std::string_view rock_shape_name(RockShape shape) {
  switch (shape) {
    case RockShape::blocky:
      return "blocky";
    case RockShape::wedge:
      return "wedge";
    case RockShape::slabby:
      return "slabby";
    case RockShape::notched:
      return "notched";
    case RockShape::rounded:
      return "rounded";
    case RockShape::splinter:
      return "splinter";
  }
  return "";
}

RockBody RockBody::make(RockShape shape, const Vec3& axes, Draws& draws) {
  RockBody body;
  body.shape_ = shape;
  body.size_ = axes[1];
  body.axes_ = axes;
  body.seed_ = static_cast<std::uint32_t>(draws.uniform() * 4294967295.0);
  if (shape == RockShape::rounded) {
    body.halvings_of_wear_ = 2 + static_cast<int>(1.5 * draws.uniform());
    body.roughness_ = between(draws, 0.005, 0.02);
  } else {
    body.halvings_of_wear_ = 5 + static_cast<int>(2.5 * draws.uniform());
    body.roughness_ = between(draws, 0.015, 0.04);
  }
  if (shape == RockShape::notched) {
    const Vec3 tall = filtered(axes, Vec3(between(draws, 0.5, 0.7), 1, 1));
    const Vec3 flat = filtered(axes, Vec3(1, between(draws, 0.75, 1), between(draws, 0.5, 0.7)));
    body.parts_ = {broken(tall, breaking_of(shape, draws), draws)};
    body.parts_.push_back(broken(flat, breaking_of(shape, draws), draws));
  } else if (shape == RockShape::splinter) {
    body.parts_ = {splintered(filtered(axes, {1.18F, 1.25F, 1.25F}), draws)};
    body.halvings_of_wear_ = 7;
  } else {
    body.parts_ = {broken(axes, breaking_of(shape, draws), draws)};
  }
  return body;
}

float RockBody::unroughened_radius(const Facets& part, const Vec3& direction) const {
  double sum = 0;
  for (const Facet& facet : part) {
    const float along = facet.normal.dot(direction) / facet.distance * size_;
    if (along <= 0) continue;
    double power = along;
    for (int times = 0; times < halvings_of_wear_; ++times) power *= power;
    sum += power;
  }
  return size_ * static_cast<float>(std::pow(sum, -1.0 / (1 << halvings_of_wear_)));
}

float RockBody::roughened(float radius, const Vec3& direction) const {
  const Vec3 at = direction * (radius / size_ * 2.2F);
  return radius + roughness_ * size_ * layered_noise(at, seed_, 3).value;
}

float RockBody::radius(const Vec3& direction) const {
  float largest = 0;
  for (const Facets& part : parts_) {
    largest = std::max(largest, unroughened_radius(part, direction));
  }
  return roughened(largest, direction);
}

Vec3 RockBody::normal(const Vec3& at) const {
  const Vec3 direction = at.normalized();
  const Facets* outer = nullptr;
  float largest = 0;
  for (const Facets& part : parts_) {
    const float here = parts_.size() == 1 ? 1 : unroughened_radius(part, direction);
    if (here > largest) {
      largest = here;
      outer = &part;
    }
  }
  float nearest = 0;
  for (const Facet& facet : *outer) {
    nearest = std::max(nearest, facet.normal.dot(direction) / facet.distance);
  }
  Vec3 sum(0, 0, 0);
  for (const Facet& facet : *outer) {
    const float along = facet.normal.dot(direction) / facet.distance / nearest;
    if (along <= 0) continue;
    float power = along;
    for (int times = 0; times < halvings_of_wear_; ++times) power *= power;
    sum += facet.normal * (power / (along * facet.distance));
  }
  return sum.normalized();
}

TriangleMesh RockBody::mesh(int level) const {
  TriangleMesh mesh = sphere_mesh(level);
  for (Vec3& point : mesh.points) {
    const Vec3 direction = spread(point);
    point = direction * radius(direction);
  }
  return mesh;
}

std::vector<std::vector<Vec3>> RockBody::hulls() const {
  std::vector<std::vector<Vec3>> hulls;
  for (const Facets& part : parts_) {
    std::vector<Vec3> surface;
    for (const Vec3& even : sphere_mesh(3).points) {
      const Vec3 direction = spread(even);
      surface.push_back(direction * roughened(unroughened_radius(part, direction), direction));
    }
    std::vector<std::size_t> farthest;
    for (const Vec3& direction : sphere_mesh(2).points) {
      const auto reach = [&](const Vec3& a, const Vec3& b) {
        return a.dot(direction) < b.dot(direction);
      };
      farthest.push_back(static_cast<std::size_t>(
          std::max_element(surface.begin(), surface.end(), reach) - surface.begin()));
    }
    std::sort(farthest.begin(), farthest.end());
    farthest.erase(std::unique(farthest.begin(), farthest.end()), farthest.end());
    std::vector<Vec3>& hull = hulls.emplace_back();
    for (const std::size_t index : farthest) hull.push_back(surface[index]);
  }
  return hulls;
}

void RockBody::scale(float factor) {
  for (Facets& part : parts_) {
    for (Facet& facet : part) facet.distance *= factor;
  }
  size_ *= factor;
}

}  // namespace proofstone::piles
