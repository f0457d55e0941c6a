#pragma once

#include "engine/finding/steps.h"
#include "engine/vision/photo.h"
#include "engine/vision/plane_view.h"

namespace proofstone {

/// A board is a flat sheet with six markers, three beside one another in two rows, a quarter of an
/// edge apart; board 1 has markers 0 to 5, board 2 the next six. Each marker alone tells the scale;
/// together they tell it better, and show whether the sheet is bent.
inline constexpr int board_columns = 3;
inline constexpr int board_rows = 2;
inline constexpr int markers_of_board = board_columns * board_rows;
/// Between two markers, and paper round them, in edges of a marker.
inline constexpr double board_gap = 0.25;

/// From 1: the board to which a marker belongs.
int board_of(int marker);

/// The upper left corner of a marker on its board, in edges, from the board's own first corner.
PlanePoint place_on_board(int marker);

/// The corners of the sheet of a board on the picture, with the paper round its markers; none where
/// its markers are no board.
std::vector<PhotoPoint> sheet_in_view(const ScaleBoard& board);

/// What a board says of a photo.
struct BoardReading {
  Length pixel;       ///< length of a pixel at its middle
  PhotoPoint middle;  ///< of the markers that were seen
  Angle oblique;      ///< of the line of sight from square to the board
};

/// The scale at a board from the markers in sight: pixels to an edge along the direction in which
/// the picture shows the board longest, because the other is foreshortened. Problems: markers that
/// do not lie as on a flat board.
Expected<BoardReading> read_board(const ScaleBoard& board, const std::string& where, Steps& steps);

/// What is wrong with a board as it was taken down: no marker, one that no board has, one twice,
/// markers of two boards, corners off the picture or too close, an edge that nobody prints.
Problems problems_of_board(const ScaleBoard& board, const PictureSize& picture,
                           const std::string& where);

}  // namespace proofstone
