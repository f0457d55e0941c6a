#include "piles/sphere_mesh.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace proofstone::piles {
namespace {

TriangleMesh icosahedron() {
  const float t = (1 + std::sqrt(5.0F)) / 2;
  TriangleMesh mesh;
  for (const auto& [x, y, z] : std::initializer_list<std::array<float, 3>>{{-1, t, 0},
                                                                           {1, t, 0},
                                                                           {-1, -t, 0},
                                                                           {1, -t, 0},
                                                                           {0, -1, t},
                                                                           {0, 1, t},
                                                                           {0, -1, -t},
                                                                           {0, 1, -t},
                                                                           {t, 0, -1},
                                                                           {t, 0, 1},
                                                                           {-t, 0, -1},
                                                                           {-t, 0, 1}}) {
    mesh.points.push_back(Vec3(x, y, z).normalized());
  }
  mesh.triangles = {{0, 11, 5}, {0, 5, 1},  {0, 1, 7},   {0, 7, 10}, {0, 10, 11},
                    {1, 5, 9},  {5, 11, 4}, {11, 10, 2}, {10, 7, 6}, {7, 1, 8},
                    {3, 9, 4},  {3, 4, 2},  {3, 2, 6},   {3, 6, 8},  {3, 8, 9},
                    {4, 9, 5},  {2, 4, 11}, {6, 2, 10},  {8, 6, 7},  {9, 8, 1}};
  return mesh;
}

TriangleMesh halved(const TriangleMesh& coarse) {
  TriangleMesh fine;
  fine.points = coarse.points;
  std::map<std::pair<unsigned, unsigned>, unsigned> middles;
  const auto middle = [&](unsigned a, unsigned b) {
    const auto next = static_cast<unsigned>(fine.points.size());
    const auto [found, is_new] = middles.try_emplace({std::min(a, b), std::max(a, b)}, next);
    if (is_new) fine.points.push_back((fine.points[a] + fine.points[b]).normalized());
    return found->second;
  };
  for (const auto& [a, b, c] : coarse.triangles) {
    const unsigned ab = middle(a, b);
    const unsigned bc = middle(b, c);
    const unsigned ca = middle(c, a);
    fine.triangles.insert(fine.triangles.end(),
                          {{a, ab, ca}, {b, bc, ab}, {c, ca, bc}, {ab, bc, ca}});
  }
  return fine;
}

}  // namespace

const TriangleMesh& sphere_mesh(int level) {
  static const std::vector<TriangleMesh> levels = [] {
    std::vector<TriangleMesh> made{icosahedron()};
    while (made.size() < 7) made.push_back(halved(made.back()));
    return made;
  }();
  return levels[static_cast<std::size_t>(level)];
}

}  // namespace proofstone::piles
