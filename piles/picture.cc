#include "piles/picture.h"

namespace proofstone::piles {

Picture take_picture(const Pile& pile, const PileSurface& surface, const PictureRequest& request) {
  Picture picture;
  picture.view = draw_view(pile, surface, request.view, request.seed);
  picture.look = request.look;
  Scene scene;
  scene.add_stones(pile, picture.view.camera);
  picture.objects = add_setting(scene, pile, surface, picture.view, request.look);
  scene.finish();
  picture.mask = render_mask(scene, picture.view.camera);
  if (request.effort.samples == 0) return picture;
  const SurfaceLooks looks(pile, scene, request.look);
  const Sky sky(request.look.light, pile.up());
  picture.light = render(scene, looks, sky, picture.view.camera, request.effort, request.seed);
  return picture;
}

StoneMask take_mask(const Pile& pile, const View& view) {
  Scene scene;
  scene.add_stones(pile, view.camera);
  scene.finish();
  return render_mask(scene, view.camera);
}

}  // namespace proofstone::piles
