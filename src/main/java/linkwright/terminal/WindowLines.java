package linkwright.terminal;

import com.googlecode.lanterna.TextColor;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.function.Function;
import javax.swing.JComponent;
import linkwright.coach.content.Drawing;
import linkwright.view.Ink;
import linkwright.view.Tone;

/**
 * The lines of drawings over the letters of the window: as smooth as its pixels allow. It is seen
 * through and takes no clicks.
 */
final class WindowLines extends JComponent {
  private static final long serialVersionUID = 1L;

  /** The thinnest line that is seen at arm's length, pixels. */
  private static final float THIN = 1.6f;

  private final int columnPixels;
  private final int rowPixels;
  private final transient Function<Tone, TextColor> colours;
  private final Color plain;
  private transient volatile List<Ink> shown = List.of();

  WindowLines(int columnPixels, int rowPixels, Function<Tone, TextColor> colours, Color plain) {
    this.columnPixels = columnPixels;
    this.rowPixels = rowPixels;
    this.colours = colours;
    this.plain = plain;
    setOpaque(false);
  }

  /** Shows these in place of those before; may be called by any thread. */
  void show(List<Ink> inks) {
    if (!inks.equals(shown)) {
      shown = inks;
      repaint();
    }
  }

  @Override
  public boolean contains(int x, int y) {
    return false;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D pen = (Graphics2D) graphics.create();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    for (Ink ink : shown) {
      pen.setColor(colour(ink.tone()));
      for (Drawing.Stroke stroke : ink.strokes()) {
        draw(pen, ink, stroke);
      }
    }
    pen.dispose();
  }

  private Color colour(Tone tone) {
    TextColor colour = colours.apply(tone);
    return colour.equals(TextColor.ANSI.DEFAULT)
        ? plain
        : new Color(colour.getRed(), colour.getGreen(), colour.getBlue());
  }

  private void draw(Graphics2D pen, Ink ink, Drawing.Stroke stroke) {
    double perMm = ink.dotsPerMm() * columnPixels / 2;
    double middleX = (ink.x() + ink.wide() / 2.0) * columnPixels;
    double middleY = (ink.y() + ink.high() / 2.0) * rowPixels;
    Path2D path = new Path2D.Double();
    for (Drawing.At at : stroke.line()) {
      double x = middleX + at.xMm() * perMm;
      double y = middleY + (ink.middleYMm() - at.yMm()) * perMm;
      if (path.getCurrentPoint() == null) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
    }
    if (stroke.kind() == Drawing.StrokeKind.SOLID) {
      path.closePath();
      pen.fill(path);
      return;
    }
    boolean fresh = stroke.kind() == Drawing.StrokeKind.NEW;
    float wide = (float) Math.max(fresh ? 2 * THIN : THIN, stroke.thickMm() * perMm);
    pen.setStroke(new BasicStroke(wide, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    pen.draw(path);
  }
}
