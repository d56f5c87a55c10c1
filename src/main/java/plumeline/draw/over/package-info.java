/// What is drawn over a picture of any size, be it line art or computed: deliveries' frames and keep-outs.
///
/// Front class: [plumeline.draw.over.DeliveryFrames]. Not here: the picture itself.
@NullMarked
package plumeline.draw.over;

import org.jspecify.annotations.NullMarked;
