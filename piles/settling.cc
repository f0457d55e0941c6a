#include "piles/settling.h"

#include <btBulletDynamicsCommon.h>

#include <algorithm>
#include <cmath>
#include <memory>

#include "piles/drop_heights.h"
#include "piles/noise.h"

namespace proofstone::piles {
namespace {

// Physics works in units of D50, in which its tolerances are the same for all rock.
constexpr float gravity = 9.81F;
constexpr float step_seconds = 1.0F / 90;
constexpr float friction = 0.7F;
constexpr float gap = 0.01F;  ///< that the collision shapes keep
constexpr float fall = 4;     ///< that rock is dumped onto a layer or into a truck

/// Bullet's world of one pile.
class World {
 public:
  World() {
    world_.setGravity({0, 0, -gravity});
    world_.getSolverInfo().m_numIterations = 12;
  }

  void add_wall(const Vec3& normal, float distance, float wall_friction) {
    auto shape = std::make_unique<btStaticPlaneShape>(normal, distance);
    auto body = std::make_unique<btRigidBody>(0.0F, nullptr, shape.get());
    body->setFriction(wall_friction);
    world_.addRigidBody(body.get());
    keep(std::move(shape), std::move(body));
  }

  /// Adds a stone with its centroid at `at`.
  btRigidBody* add_stone(const Stone& stone, float unit, const Vec3& at, const btQuaternion& turn) {
    auto compound = std::make_unique<btCompoundShape>();
    for (const auto& hull : stone.body.hulls()) {
      auto part = std::make_unique<btConvexHullShape>();
      for (const Vec3& point : hull) part->addPoint((point - stone.measure.centroid) / unit, false);
      part->recalcLocalAabb();
      part->setMargin(gap);
      compound->addChildShape(btTransform::getIdentity(), part.get());
      shapes_.push_back(std::move(part));
    }
    btCollisionShape* shape = compound.get();
    if (compound->getNumChildShapes() == 1) shape = compound->getChildShape(0);
    const float mass = stone.measure.volume / (unit * unit * unit);
    Vec3 inertia;
    shape->calculateLocalInertia(mass, inertia);
    auto body = std::make_unique<btRigidBody>(mass, nullptr, shape, inertia);
    body->setWorldTransform(btTransform(turn, at));
    body->setFriction(friction);
    body->setDamping(0.15F, 0.4F);
    body->setRollingFriction(0.05F);
    world_.addRigidBody(body.get());
    btRigidBody* added = body.get();
    keep(std::move(compound), std::move(body));
    return added;
  }

  /// Steps until nothing moves faster than `rest`, or for `longest` seconds.
  void run(float longest, float rest) {
    const int steps = static_cast<int>(longest / step_seconds);
    for (int step = 0; step < steps; ++step) {
      world_.stepSimulation(step_seconds, 0, step_seconds);
      if (step > 30 && step % 10 == 0 && fastest() < rest) return;
    }
  }

  void set_gravity(const Vec3& down) {
    world_.setGravity(down * gravity);
    for (const auto& body : bodies_) {
      body->setGravity(body->getInvMass() > 0 ? down * gravity : Vec3(0, 0, 0));
      body->activate(true);
    }
  }

 private:
  void keep(std::unique_ptr<btCollisionShape> shape, std::unique_ptr<btRigidBody> body) {
    shapes_.push_back(std::move(shape));
    bodies_.push_back(std::move(body));
  }

  float fastest() const {
    float fastest = 0;
    for (const auto& body : bodies_) {
      fastest = std::max(fastest, static_cast<float>(body->getLinearVelocity().length2()));
    }
    return std::sqrt(fastest);
  }

  btDefaultCollisionConfiguration configuration_;
  btCollisionDispatcher dispatcher_{&configuration_};
  btDbvtBroadphase broadphase_;
  btSequentialImpulseConstraintSolver solver_;
  std::vector<std::unique_ptr<btCollisionShape>> shapes_;
  std::vector<std::unique_ptr<btRigidBody>> bodies_;
  // Last, so that it goes first.
  btDiscreteDynamicsWorld world_{&dispatcher_, &broadphase_, &solver_, &configuration_};
};

btQuaternion any_turn(Draws& draws) {
  const auto draw = [&draws] { return static_cast<float>(draws.normal()); };
  const float x = draw();
  const float y = draw();
  const float z = draw();
  const float w = draw();
  return btQuaternion(x, y, z, w).normalized();
}

void build_place(World& world, const Place& place, float unit) {
  world.add_wall({0, 0, 1}, 0, 0.9F);
  if (place.kind == PileKind::heap) return;
  const float x = place.length / unit / 2;
  const float y = place.width / unit / 2;
  world.add_wall({1, 0, 0}, -x, 0.4F);
  world.add_wall({-1, 0, 0}, -x, 0.4F);
  world.add_wall({0, 1, 0}, -y, 0.4F);
  world.add_wall({0, -1, 0}, -y, 0.4F);
}

/// Where stones are let go, in units of D50.
struct Mouth {
  float half_x = 0;
  float half_y = 0;
};

/// A heap is poured over a patch that shrinks as it grows, so that little falls far.
Mouth mouth_of(const Place& place, float unit, float volume, float done) {
  if (place.kind != PileKind::heap) return {place.length / unit / 2, place.width / unit / 2};
  // The radius of a cone of this rock and its voids that is as steep as rock lies.
  const float radius = std::cbrt(3 * volume / (SIMD_PI * 0.6F * 0.65F));
  const float reach = std::max(1.2F, radius * (0.6F - 0.4F * done));
  return {reach, reach};
}

}  // namespace

std::vector<btTransform> settle(const std::vector<Stone>& stones, const Place& place, float d50,
                                unsigned seed) {
  World world;
  build_place(world, place, d50);
  Draws draws(mixed_seed(seed, 2));
  std::vector<std::size_t> order(stones.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  for (std::size_t i = order.size(); i > 1; --i) {
    std::swap(order[i - 1],
              order[static_cast<std::size_t>(draws.uniform() * static_cast<double>(i))]);
  }

  float volume = 0;
  for (const Stone& stone : stones) volume += stone.measure.volume / (d50 * d50 * d50);
  const std::size_t pours = place.kind == PileKind::heap ? 1 + stones.size() / 24 : 1;
  std::vector<btRigidBody*> bodies(stones.size());
  for (std::size_t pour = 0; pour < pours; ++pour) {
    const float done = static_cast<float>(pour) / static_cast<float>(pours);
    const Mouth mouth = mouth_of(place, d50, volume, done);
    DropHeights heights(mouth.half_x, mouth.half_y, 0.2F);
    for (const btRigidBody* body : bodies) {
      if (body == nullptr) continue;
      Vec3 low;
      Vec3 high;
      body->getAabb(low, high);
      heights.fill(low, high);
    }
    for (std::size_t i = pour * stones.size() / pours; i < (pour + 1) * stones.size() / pours;
         ++i) {
      const Stone& stone = stones[order[i]];
      const float radius = 0.5F * stone.measure.a / d50;
      const auto along = [&](float half) {
        const float room = std::max(0.0F, half - radius);
        return static_cast<float>(2 * draws.uniform() - 1) * room;
      };
      const float x = along(mouth.half_x);
      const float y = along(mouth.half_y);
      const Vec3 height(0, 0, place.kind == PileKind::heap ? 0 : fall);
      const Vec3 at = heights.drop(x, y, radius) + height;
      bodies[order[i]] = world.add_stone(stone, d50, at, any_turn(draws));
    }
    // The next are let go above whatever still falls: not before it has fallen twenty D50.
    world.run(pour + 1 < pours ? 2.0F : 6.0F, 0.05F);
  }
  if (place.slope > 0) {
    world.set_gravity({0, -std::sin(place.slope), -std::cos(place.slope)});
    world.run(3.0F, 0.05F);
  }

  std::vector<btTransform> poses;
  for (std::size_t i = 0; i < stones.size(); ++i) {
    btTransform pose = bodies[i]->getWorldTransform();
    pose.setOrigin(pose.getOrigin() * d50);
    poses.push_back(pose * btTransform(btQuaternion::getIdentity(), -stones[i].measure.centroid));
  }
  return poses;
}

}  // namespace proofstone::piles
