/**
 * What a step is shown with, in drawings and words of the job. Start reading at {@link
 * linkwright.coach.kernel.drawn.PictureContent}. Nothing is null.
 */
package linkwright.coach.kernel.drawn;
