using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class DesignPhotoConfiguration : IEntityTypeConfiguration<DesignPhoto>
{
    public void Configure(EntityTypeBuilder<DesignPhoto> photo)
    {
        photo.ToTable("DesignPhotos");
        photo.HasKey(it => new { it.DesignId, it.PhotoId });
        photo.Property(it => it.Caption).HasMaxLength(DesignPhoto.CaptionLength);
        photo.HasOne<Design>().WithMany().HasForeignKey(it => it.DesignId).OnDelete(DeleteBehavior.Restrict);
        photo.HasOne<Photo>().WithMany().HasForeignKey(it => it.PhotoId).OnDelete(DeleteBehavior.Restrict);
    }
}
