package gudgeon.rebuild.fasten;

import gudgeon.mechanics.plane.Pixel;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A photo of a joint beside a sheet, with what a person marked in it.
 *
 * @param photo the photo's hash
 * @param sheet the sheet as it lies in the photo
 * @param corners its corners: top left, top right, bottom right, bottom left
 * @param within by how many points of the picture a mark may be off, more than 0
 * @param fromInside whether the face is seen from inside the engine, so that the map is the other way round
 * @param outline the outline of the joint, corner by corner; may be empty
 * @param holes where each hole was marked
 * @param check a distance measured on the joint, to hold the map against
 */
public record MarkedPhoto(
        String photo,
        SheetOfPaper sheet,
        List<Pixel> corners,
        double within,
        boolean fromInside,
        List<Pixel> outline,
        Map<String, Pixel> holes,
        Optional<MeasuredApart> check) {
    public MarkedPhoto {
        corners = List.copyOf(corners);
        outline = List.copyOf(outline);
        holes = Map.copyOf(holes);
    }

    /**
     * Two holes whose distance was measured.
     *
     * @param length from middle to middle, as written
     */
    public record MeasuredApart(String one, String other, String length) {}
}
